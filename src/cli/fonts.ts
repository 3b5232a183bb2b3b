import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { FontFiles } from '../formats/index.ts';

const find = createRequire(import.meta.url);

const weight = (name: string): Promise<Uint8Array> =>
  readFile(find.resolve(`@expo-google-fonts/alegreya-sans/${name}/AlegreyaSans_${name}.ttf`));

/** The program's one type family, whole, for embedding in prints. */
export const readFonts = async (): Promise<FontFiles> => ({
  regular: await weight('400Regular'),
  bold: await weight('700Bold'),
});
