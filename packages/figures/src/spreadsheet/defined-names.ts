/** Far below the 255 that spreadsheets take, so that formulas stay readable. */
const MOST_LETTERS = 48;

/** Letters that Unicode does not take apart into a plain one and its mark. */
const PLAIN_LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  Æ: 'Ae',
  œ: 'oe',
  Œ: 'Oe',
  ø: 'o',
  Ø: 'O',
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  ð: 'd',
  þ: 'th',
  '%': ' percent ',
  '&': ' and ',
  '+': ' plus ',
  '²': '2',
  '³': '3',
};

/** Names that spreadsheet programs keep for themselves (ECMA-376 part 1, 18.2.5 definedName, and common practice). */
const TAKEN = [
  'true',
  'false',
  'print_area',
  'print_titles',
  'criteria',
  'extract',
  'database',
  'consolidate_area',
  'sheet_title',
  'auto_open',
  'auto_close',
  'auto_activate',
  'auto_deactivate',
];

/** "A1" up to more columns than any program has, and "R1C1" in all its short forms. */
const LOOKS_LIKE_A_CELL = /^(?:[a-z]{1,4}\d+|r\d*c?\d*|c\d*)$/i;

function readable(label: string, most: number): string {
  const plain = label
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{ASCII}]|[%&+]/gu, (letter) => PLAIN_LETTERS[letter] ?? ' ')
    .replace(/['"]/g, '')
    .replace(/[^A-Za-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '');
  if (plain.length <= most) return plain;
  const cut = plain.slice(0, most);
  const atWord = cut.lastIndexOf('_');
  return atWord > most / 2 ? cut.slice(0, atWord) : cut;
}

function valid(name: string): string {
  if (name === '') return 'input';
  if (/^\d/.test(name)) return `value_${name}`;
  // Members of every object are left out, since programs keep names as keys of one.
  const isTaken = TAKEN.includes(name.toLowerCase()) || name in {};
  return isTaken || LOOKS_LIKE_A_CELL.test(name) ? `${name}_` : name;
}

/** A cell that wants a name: what it is called, and what tells it apart from others called the same. */
interface Named {
  readonly label: string;
  /** Parts with slashes between, the last ones telling the most apart ("price/yard/A44/board-foot/100"). */
  readonly key: string;
}

/** The shortest end of each key that no other of these keys has; all of it where there is none. */
function tellingEnds(keys: readonly string[]): string[] {
  const parts = keys.map((key) => key.split('/'));
  const ends = [...keys];
  let open = parts.map((_, at) => at);
  for (let count = 1; open.length > 0 && open.some((at) => count < (parts[at]?.length ?? 0)); count += 1) {
    const endOf = (at: number) => (parts[at] ?? []).slice(-count).join('/');
    const times = new Map<string, number>();
    for (const at of parts.keys()) times.set(endOf(at), (times.get(endOf(at)) ?? 0) + 1);
    for (const at of open) if (times.get(endOf(at)) === 1) ends[at] = endOf(at);
    open = open.filter((at) => times.get(endOf(at)) !== 1);
  }
  return ends;
}

/**
 * Names for the cells of one workbook: like their labels, with the telling end of their keys where several are called the
 * same. Made of plain letters, digits and underscores, which every spreadsheet program takes, never read as a cell,
 * and different also to programs that do not look at capitals.
 * @returns the name of each key
 */
export function definedNames(cells: readonly Named[]): Map<string, string> {
  const alike = new Map<string, Named[]>();
  for (const cell of cells) {
    const called = readable(cell.label, MOST_LETTERS).toLowerCase();
    const group = alike.get(called);
    if (group === undefined) alike.set(called, [cell]);
    else group.push(cell);
  }
  const names = new Map<string, string>();
  /** How often each name was given, so that the next one is numbered at once. */
  const given = new Map<string, number>();
  for (const group of alike.values()) {
    const ends = group.length === 1 ? [''] : tellingEnds(group.map(({ key }) => key));
    group.forEach(({ label, key }, at) => {
      const end = readable(ends[at] ?? '', MOST_LETTERS);
      const first = valid([readable(label, MOST_LETTERS), end].filter((part) => part !== '').join('_'));
      let name = first;
      while (given.has(name.toLowerCase())) {
        const copy = (given.get(first.toLowerCase()) ?? 1) + 1;
        given.set(first.toLowerCase(), copy);
        name = `${first}_${copy}`;
      }
      given.set(name.toLowerCase(), 1);
      names.set(key, name);
    });
  }
  return names;
}
