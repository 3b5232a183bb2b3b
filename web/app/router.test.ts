import { describe, expect, it } from 'vitest';
import { pathTo, routeOf } from './router.ts';

describe('addresses', () => {
  it('name the pages', () => {
    expect(routeOf('/')).toEqual({ page: 'home' });
    expect(routeOf('/wearers/')).toEqual({ page: 'wearers' });
    expect(routeOf('/cloth')).toEqual({ page: 'cloths' });
    expect(routeOf('/makes/new')).toEqual({ page: 'make-new' });
    expect(routeOf('/makes')).toEqual({ page: 'nowhere' });
    expect(routeOf('/patterns/a/b')).toEqual({ page: 'nowhere' });
    expect(routeOf('/elsewhere/1')).toEqual({ page: 'nowhere' });
  });

  it('carry any id there and back', () => {
    for (const id of ['house:blouse', 'a b', 'ä/ö?#', '%']) {
      for (const page of ['wearer', 'pattern', 'envelope', 'cloth', 'make'] as const) {
        expect(routeOf(pathTo(page, id))).toEqual({ page, id });
      }
    }
  });

  it('do not stumble over a broken escape', () => {
    expect(routeOf('/wearers/%E0%A4%A')).toEqual({ page: 'wearer', id: '%E0%A4%A' });
  });
});
