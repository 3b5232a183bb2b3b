import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { bad, good, type Result } from '../units/index.ts';

/** No document this program reads is near this large; a larger file is a mistake, and is not read. */
const largestFile = 64 * 1024 * 1024;

const codeOf = (fault: unknown): string => (fault as { code?: string }).code ?? '';

/** Text of a file a person named. A missing, unreadable or far too large file is a problem, not a fault. */
export const readTextFile = async (path: string): Promise<Result<string>> => {
  try {
    const { size } = await stat(path);
    if (size > largestFile) return bad('cli.file-too-large', { file: path, megabytes: Math.round(size / 1e6) });
    return good(await readFile(path, 'utf8'));
  } catch (fault) {
    if (codeOf(fault) === 'ENOENT') return bad('cli.file-missing', { file: path });
    return bad('cli.file-unreadable', { file: path, why: codeOf(fault) });
  }
};

export const readJsonFile = async (path: string): Promise<Result<unknown>> => {
  const text = await readTextFile(path);
  if (!text.ok) return text;
  try {
    return good(JSON.parse(text.value) as unknown);
  } catch {
    return bad('cli.file-not-json', { file: path });
  }
};

/** Writes a whole file or nothing: beside its place first, then moved there. */
export const writeWholeFile = async (path: string, content: string | Uint8Array): Promise<Result<null>> => {
  const beside = `${path}.part-${process.pid}`;
  try {
    await writeFile(beside, content);
    await rename(beside, path);
    return good(null);
  } catch (fault) {
    await rm(beside, { force: true }).catch(() => undefined);
    if (codeOf(fault) === 'ENOSPC') return bad('cli.disk-full', { file: path });
    return bad('cli.file-unwritable', { file: path, why: codeOf(fault) });
  }
};
