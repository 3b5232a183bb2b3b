import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root, runTool } from './tools.ts';

const places = ['src', 'web', 'demo', 'test', 'bench'];

const cruise = (): { readonly modules: number; readonly broken: readonly string[] } => {
  const { printed } = runTool('depcruise', [...places, '--config', '.dependency-cruiser.cjs', '--output-type', 'json']);
  const report = JSON.parse(printed.slice(printed.indexOf('{'))) as {
    summary: {
      totalCruised: number;
      violations: { rule: { name: string; severity: string }; from: string; to: string }[];
    };
  };
  return {
    modules: report.summary.totalCruised,
    broken: report.summary.violations
      .filter((violation) => violation.rule.severity === 'error')
      .map((violation) => `${violation.rule.name}: ${violation.from} → ${violation.to}`),
  };
};

/** Files that break the house's rules, laid beside the real ones for the length of one test. */
const withPlanted = <T>(files: Readonly<Record<string, string>>, look: () => T): T => {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(root, file, '..'), { recursive: true });
    writeFileSync(join(root, file), text);
  }
  try {
    return look();
  } finally {
    for (const file of Object.keys(files)) rmSync(join(root, file), { force: true });
  }
};

describe('the house', () => {
  it('has no type errors', () => {
    const { status, printed } = runTool('tsc', ['-p', '.']);
    expect(printed.trim()).toBe('');
    expect(status).toBe(0);
  });

  it('is linted and formatted', () => {
    const { status, printed } = runTool('biome', ['check', '.', '--max-diagnostics=20']);
    expect(status, printed).toBe(0);
  });

  it('lets a room import only rooms above it, through their index', () => {
    const { modules, broken } = cruise();
    expect(modules).toBeGreaterThan(80);
    expect(broken).toEqual([]);
  });

  it('notices a room that looks down, one that reaches past an index, a pure room that reads a file, and an oracle that asks', () => {
    const { broken } = withPlanted(
      {
        'src/geometry/planted-down.ts':
          "import { alterationCatalogue } from '../alter/index.ts';\nexport const planted = alterationCatalogue;\n",
        'src/alter/planted-past.ts': "import { line } from '../geometry/segments.ts';\nexport const planted = line;\n",
        'src/fit/planted-file.ts': "import { readFileSync } from 'node:fs';\nexport const planted = readFileSync;\n",
        'test/oracle/planted-ask.ts':
          "import { line } from '../../src/geometry/index.ts';\nexport const planted = line;\n",
      },
      cruise,
    );
    const rules = broken.map((line) => line.split(':')[0]);
    expect(rules).toContain('geometry-looks-only-up');
    expect(rules).toContain('geometry-through-its-index');
    expect(rules).toContain('pure-rooms-touch-nothing');
    expect(rules).toContain('oracle-judges-alone');
  });
});
