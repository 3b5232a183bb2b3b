import { runChains } from './run-chains.ts';

runChains({ name: 'the second half', seed: 720261, usual: 500, full: 125, judged: 6 });
