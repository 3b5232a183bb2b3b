import { runChains } from './run-chains.ts';

const fresh = Number(process.env['EASEWRIGHT_SEED'] ?? Date.now()) % 2 ** 31;
console.log(`alteration chains: fresh seed ${fresh}`);

runChains({ name: `fresh, from ${fresh}`, seed: fresh, usual: 200, full: 50, judged: 10, fresh: true });
