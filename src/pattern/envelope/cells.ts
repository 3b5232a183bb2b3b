/** What stands between the figures of a chart. `space`: single ones, told apart only by the number of sizes. */
export type Separator = 'tab' | 'semicolon' | 'bar' | 'comma' | 'spaces' | 'space';

const drawnBars = /[|¦│┃]/;
const digits = /[\d½⅓⅔¼¾⅛⅜⅝⅞]/;

/** A line of a table's frame: nothing but dashes, bars, crosses and colons. */
const isFrame = (line: string): boolean => /^[\s|¦│┃+:=─━┼┬┴-]+$/.test(line) && /[-=─━]{2}/.test(line);

/** Cells between marks. A cell that begins with a quotation mark and ends with one may hold the mark itself. */
const between = (line: string, mark: string): readonly string[] => {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < line.length; at += 1) {
    const character = line[at] ?? '';
    if (quoted && character === '"' && line[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else if (
      character === '"' &&
      (quoted ? endsCell(line, at + 1, mark) : cell.trim() === '' && closes(line, at, mark))
    ) {
      quoted = !quoted;
    } else if (character === mark && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += character;
  }
  return [...cells, cell].map((one) => one.trim());
};

const endsCell = (line: string, at: number, mark: string): boolean => {
  const rest = line.slice(at).trimStart();
  return rest === '' || rest.startsWith(mark);
};

/** Whether a quotation mark at the beginning of a cell has one that ends a cell after it; else it is an inch mark. */
const closes = (line: string, at: number, mark: string): boolean => {
  for (let end = line.indexOf('"', at + 1); end >= 0; end = line.indexOf('"', end + 1)) {
    if (endsCell(line, end + 1, mark)) return true;
  }
  return false;
};

const beginsWithBar = (line: string): boolean => drawnBars.test(line.trimStart()[0] ?? '');

/** In a framed table the bars at both ends are the frame; else a line that begins with one has an empty first cell. */
const betweenBars = (line: string, framed: boolean): readonly string[] => {
  const cells = line.split(drawnBars).map((cell) => cell.trim());
  if (!framed) return cells;
  return cells.slice(cells[0] === '' ? 1 : 0, cells.length > 1 && cells.at(-1) === '' ? -1 : undefined);
};

/** `Bust: 80, 84, 88`: the colon parts the name from the first figure. */
const afterColon = (cells: readonly string[]): readonly string[] => {
  const [first = '', ...others] = cells;
  const named = /^([^:]*\p{L}[^:]*):\s*(\S.*)$/u.exec(first);
  return named ? [named[1] ?? '', named[2] ?? '', ...others] : cells;
};

export const cellsOf = (line: string, separator: Separator, framed = false): readonly string[] => {
  switch (separator) {
    case 'tab':
      return between(line, '\t');
    case 'semicolon':
      return between(line, ';');
    case 'comma':
      return afterColon(between(line, ','));
    case 'bar':
      return betweenBars(line, framed);
    case 'spaces':
      return line.trim().split(/ {2,}|\t/);
    case 'space':
      return [line.trim()];
  }
};

const most = (counts: readonly number[]): number => {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  return [...times].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
};

/** A comma between two digits may be a decimal mark; before the first figure, or with a space after it, it is none. */
const commaParts = (line: string): boolean => {
  const at = line.indexOf(',');
  return at >= 0 && !(/\d/.test(line[at - 1] ?? '') && /\d/.test(line[at + 1] ?? ''));
};

/**
 * What separates the columns: the strongest mark that most lines with figures carry. Commas only where they part
 * more cells than spaces do and the first of them is no decimal mark.
 */
export const separatorOf = (lines: readonly string[]): Separator => {
  const rows = lines.filter((line) => digits.test(line));
  const inMost = (has: (line: string) => boolean): boolean => rows.filter(has).length * 2 > rows.length;
  if (inMost((line) => /\S *\t/.test(line))) return 'tab';
  if (inMost((line) => line.includes(';'))) return 'semicolon';
  if (inMost((line) => drawnBars.test(line))) return 'bar';
  const spaced = most(rows.map((line) => cellsOf(line, 'spaces').length));
  const commas = most(rows.map((line) => cellsOf(line, 'comma').length));
  if (commas > 1 && commas >= spaced && inMost(commaParts)) return 'comma';
  return spaced > 1 ? 'spaces' : 'space';
};

/** Lines as cells, without the lines of a table's frame. */
export const chartCells = (
  lines: readonly string[],
): { readonly separator: Separator; readonly rows: readonly (readonly string[])[] } => {
  const unframed = lines.filter((line) => !isFrame(line));
  const separator = separatorOf(unframed);
  const barred = unframed.filter((line) => drawnBars.test(line));
  const framed = barred.every(beginsWithBar);
  return { separator, rows: unframed.map((line) => cellsOf(line, separator, framed)) };
};

const number = String.raw`(?:\d+(?:[.,]\d+)?(?:[ -]\d+\/\d+| ?[½⅓⅔¼¾⅛⅜⅝⅞])?|\d+\/\d+|[½⅓⅔¼¾⅛⅜⅝⅞])`;
const unit = String.raw`(?: ?(?:"|″|”|''|(?:in|ins|inches|cm|mm|m|yd|yds|yards)(?![a-z])\.?))?`;
const again = String.raw` ?\( ?${number}${unit} ?\)`;
const cell = `(?:${number}${unit}(?: ?- ?${number}${unit}| to ${number}${unit}|${again})?|-)`;
const tailOf = (count: number): RegExp => new RegExp(`^${cell}(?: +${cell}){${count - 1}}$`, 'i');
const oneCell = new RegExp(cell, 'gi');

/** Past these a line is no row of a chart, and trying every way to part it would take long. */
const longestLine = 1000;
const mostRanges = 20;

/**
 * A line whose figures stand apart by single spaces, as label and figures: the first place from which it reads as
 * just as many figures as there are sizes. Null where there is none.
 */
export const splitBySizes = (line: string, sizes: number): readonly string[] | null => {
  const plain = line.trim().replace(/ +/g, ' ');
  if (plain.length > longestLine || plain.split(' - ').length > mostRanges) return null;
  const tail = tailOf(sizes);
  for (let at = 0; at >= 0 && at < plain.length; ) {
    const rest = plain.slice(at);
    if (tail.test(rest)) {
      const figures = rest.match(oneCell) ?? [];
      if (figures.length === sizes && figures.join(' ') === rest) return [plain.slice(0, at).trim(), ...figures];
    }
    const next = plain.indexOf(' ', at);
    at = next < 0 ? -1 : next + 1;
  }
  return null;
};
