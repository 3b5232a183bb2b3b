/** What long work has to say. */
export const jobsProblems = {
  'jobs.unknown-kind': {
    message: 'There is no such work as {kind}.',
    remedy: 'The page may be older than the program: load it again.',
  },
  'jobs.cancelled': {
    message: 'This was stopped before it had begun.',
    remedy: 'Start it again when you like.',
  },
} as const;

export const jobsWords = {
  stop: 'Stop',
} as const;
