import { config } from 'zod/v4/core';

// Schemas would else try whether they may write code at run time, which the page's own content policy forbids.
// This has to run before the first schema is made: imported first in a worker, awaited before the page.
config({ jitless: true });
