import sharp from 'sharp';

/** An invented pattern as its envelope prints it: three views, letter sizes, fractions and ranges, in inches. */
export const harbourDress = {
  name: 'Harbour dress',
  house: 'Halyard Lane Pattern Room',
  number: '63',
  body: [
    'SIZES     XS      S        M         L        XL',
    'Bust      31-32   33-34    35-36     37-39    40-42   in',
    'Waist     24-25   26-27    28-29     30-32    33-35   in',
    'Hip       34-35   36-37    38-39     40-42    43-45   in',
    'Back waist length   15 3/4   16   16 1/4   16 1/2   16 3/4   in',
  ],
  // As it was printed, with one slip of the printer's: the waist of size L should be 35 1/2, not 37 1/2.
  finished: [
    'SIZES                      XS       S        M        L        XL',
    'Finished bust              35 1/2   37 1/2   39 1/2   42       45',
    'Finished waist             28 1/2   30 1/2   32 1/2   37 1/2   38',
    'Finished hip, View A       39       41       43       45 1/2   48 1/2',
    'Finished hip, View B       39       41       43       45 1/2   48 1/2',
    'Finished hip, View C       37       39       41       43 1/2   46 1/2',
    'Back length, View A        39 1/2   39 3/4   40       40 1/4   40 1/2',
    'Back length, View B        47 1/2   47 3/4   48       48 1/4   48 1/2',
    'Back length, View C        25       25 1/4   25 1/2   25 3/4   26',
    'Bell of the sleeve         19       19 1/2   20       20 1/2   21',
  ],
  cloth: [
    'SIZES               XS      S       M       L       XL',
    'View A',
    '45 in               2 7/8   2 7/8   3       3 1/8   3 1/4   yd',
    '60 in               2 1/8   2 1/8   2 1/4   2 3/8   2 1/2   yd',
    'View B',
    '45 in               3 5/8   3 3/4   3 7/8   4       4 1/4   yd',
    '60 in               2 5/8   2 3/4   2 7/8   3       3 1/8   yd',
    'View C',
    '45 in               2       2       2 1/8   2 1/4   2 3/8   yd',
    '60 in               1 1/2   1 1/2   1 5/8   1 3/4   1 3/4   yd',
  ],
} as const;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

const block = (title: string, lines: readonly string[], top: number): string =>
  [
    `<text x="70" y="${top}" font-size="26" font-weight="bold">${escaped(title)}</text>`,
    ...lines.map(
      (line, index) =>
        `<text x="70" y="${top + 40 + index * 30}" font-size="21" font-family="monospace" xml:space="preserve">${escaped(line)}</text>`,
    ),
  ].join('');

/** Three little dresses in outline, as the front of an envelope shows its views. */
const views = ['A', 'B', 'C']
  .map((letter, index) => {
    const x = 640 + index * 110;
    const hem = [330, 380, 250][index] ?? 300;
    return `<path d="M ${x} 130 l -22 12 -18 70 14 6 10 -38 0 50 -24 ${hem - 230} 80 0 -24 -${hem - 230} 0 -50 10 38 14 -6 -18 -70 Z" fill="none" stroke="black" stroke-width="2.5"/>
<text x="${x}" y="${hem + 40}" font-size="24" text-anchor="middle">${letter}</text>`;
  })
  .join('');

/** The envelope's back as a picture, drawn here: what one would photograph. */
export const envelopePicture = (): Promise<Buffer> => {
  const { name, house, number, body, finished, cloth } = harbourDress;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1000" height="1400" viewBox="0 0 1000 1400">
<rect width="1000" height="1400" fill="#efe9dc"/><rect x="30" y="30" width="940" height="1340" fill="none" stroke="black" stroke-width="3"/>
<text x="70" y="110" font-size="54" font-weight="bold">${number}</text>
<text x="70" y="160" font-size="34">${name}</text><text x="70" y="200" font-size="22">${house}</text>
${views}
${block('BODY', body, 480)}${block('FINISHED GARMENT', finished, 710)}${block('CLOTH NEEDED', cloth, 1080)}
</svg>`;
  return sharp(Buffer.from(svg)).jpeg({ quality: 88 }).toBuffer();
};
