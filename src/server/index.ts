export { type ReachedWorkroom, reachWorkroom } from './client.ts';
export { type RunningServer, type ServerOptions, startServer, usualPort } from './start.ts';
