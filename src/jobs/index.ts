export { type Caller, type CallOptions, callJobs, type Running } from './call.ts';
export type { LayoutInput } from './layout.ts';
export { searchWithMany } from './layout-many.ts';
export type { FromWorker, Port, Surroundings, ToWorker } from './protocol.ts';
export type { InputOf, JobKind, OutputOf, PartialOf } from './registry.ts';
export { serveJobs } from './serve.ts';
export type { Job, JobContext } from './types.ts';
