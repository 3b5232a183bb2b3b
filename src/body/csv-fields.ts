/** Fields of one line of comma-separated values; quoted fields may hold commas and doubled quotes (RFC 4180), not line ends. */
export const csvFields = (line: string): readonly string[] => {
  const found: string[] = [];
  const pattern = /,(?:"((?:[^"]|"")*)"|([^",]*))(?=,|$)/g;
  for (const match of `,${line}`.matchAll(pattern))
    found.push((match[1] ?? match[2] ?? '').replaceAll('""', '"').trim());
  return found;
};

/** Lines of a text file that hold anything, whatever ends them; a byte order mark before the first is dropped. */
export const csvLines = (text: string): readonly string[] =>
  text
    .replace(/^\ufeff/, '')
    .split(/\r\n|\n|\r/)
    .filter((line) => line.trim() !== '');
