import { runChains } from './run-chains.ts';

runChains({ name: 'the first half', seed: 20261, usual: 500, full: 125, judged: 6 });
