import { afterEach, beforeEach } from 'vitest';

/** The steps of one job: when one has failed, those after it have nothing to stand on and are not tried. */
export const inOrder = (): void => {
  let failed = false;
  beforeEach(({ skip }) => {
    if (failed) skip('an earlier step failed');
  });
  afterEach(({ task }) => {
    if (task.result?.state === 'fail') failed = true;
  });
};
