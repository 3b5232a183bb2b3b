export * from './chart.ts';
export * from './document.ts';
export * from './doubt.ts';
export * from './figures.ts';
export * from './flat-sum.ts';
export { clothLayers, clothNaps, finishedKinds } from './names.ts';
export { readChart } from './read-chart.ts';
export * from './types.ts';
