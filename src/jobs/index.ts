export { type Caller, type CallOptions, callJobs, type Running } from './call.ts';
export { type LayoutInput, layoutJob } from './layout.ts';
export { searchWithMany } from './layout-many.ts';
export type { FromWorker, Port, Surroundings, ToWorker } from './protocol.ts';
export { type InputOf, type JobKind, jobOf, jobs, type OutputOf, type PartialOf } from './registry.ts';
export { serveJobs } from './serve.ts';
export type { Job, JobContext } from './types.ts';
