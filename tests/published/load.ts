import { readdirSync, readFileSync } from 'node:fs';
import { Decimal, type DecimalLike, decimal } from '@scantling/decimals';

/** One published example: what a source prints, and the public function that must arrive at it. */
export interface PublishedCheck {
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  readonly source: string;
  /** How the values were obtained: printed in the source, re-worked from it, or from memory. */
  readonly status: string;
  /** Namespaced name of the public function: `units/...`, `money/...`, `costing/...` or `quoting/...`. */
  readonly function: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  /** Numbers and numbers as text are decimals, lists and objects go part by part, anything else must be equal. */
  readonly expected: Readonly<Record<string, unknown>>;
  /** Largest absolute difference allowed; one number for all values, or one per name in `expected`. */
  readonly tolerance: number | string | Readonly<Record<string, number | string>>;
  readonly note?: string;
}

const FOLDER = new URL('.', import.meta.url);
const TEXT_KEYS = ['id', 'title', 'source', 'status', 'function'] as const;

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isTolerance(value: unknown): value is PublishedCheck['tolerance'] {
  if (isRecord(value)) return Object.values(value).every((part) => !isRecord(part) && isTolerance(part));
  return (typeof value === 'number' || typeof value === 'string') && decimal(value).gte(0);
}

function read(file: string): PublishedCheck {
  const raw: unknown = JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!isRecord(raw)) throw new Error(`${file}: must hold one object`);
  const texts = TEXT_KEYS.map((key) => {
    const value = raw[key];
    if (typeof value !== 'string' || value === '') throw new Error(`${file}: "${key}" must be a text`);
    return value;
  });
  const [id = '', title = '', source = '', status = '', name = ''] = texts;
  const { inputs, expected, tolerance, note } = raw;
  if (`${id}.json` !== file) throw new Error(`${file}: "id" must be the file's name`);
  if (!isRecord(inputs)) throw new Error(`${file}: "inputs" must be an object`);
  if (!isRecord(expected) || Object.keys(expected).length === 0) {
    throw new Error(`${file}: "expected" must be an object with at least one value`);
  }
  if (!isTolerance(tolerance)) throw new Error(`${file}: "tolerance" must be a number >= 0, or one per name`);
  if (note !== undefined && typeof note !== 'string') throw new Error(`${file}: "note" must be a text`);
  const check = { id, title, source, status, function: name, inputs, expected, tolerance };
  return note === undefined ? check : { ...check, note };
}

/** All checks of the folder in the order of their file names. @throws Error naming file and key when one is malformed. */
export function loadPublished(): PublishedCheck[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .map(read);
}

/** True when the two decimals differ by `tolerance` at most. */
export function near(actual: DecimalLike, expected: DecimalLike, tolerance: DecimalLike): boolean {
  return decimal(actual).minus(decimal(expected)).abs().lte(decimal(tolerance));
}

function asDecimal(value: unknown): Decimal | undefined {
  if (typeof value === 'number') return decimal(value);
  if (value instanceof Decimal) return value;
  return typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value) ? decimal(value) : undefined;
}

function toleranceOf(check: PublishedCheck, name: string): number | string {
  if (typeof check.tolerance !== 'object') return check.tolerance;
  const own = check.tolerance[name];
  if (own === undefined) throw new Error(`${check.id}: "tolerance" has no value for "${name}"`);
  return own;
}

function compare(actual: unknown, expected: unknown, tolerance: number | string, at: string): string[] {
  if (Array.isArray(expected)) {
    if (!Array.isArray(actual)) return [`${at}: a list was expected`];
    if (actual.length !== expected.length) return [`${at}: ${actual.length} values, not ${expected.length}`];
    return expected.flatMap((part, index) => compare(actual[index], part, tolerance, `${at}[${index}]`));
  }
  if (isRecord(expected) && !(expected instanceof Decimal)) {
    if (!isRecord(actual)) return [`${at}: an object was expected`];
    return Object.entries(expected).flatMap(([name, part]) =>
      compare(actual[name], part, tolerance, `${at}.${name}`),
    );
  }
  const left = asDecimal(actual);
  const right = asDecimal(expected);
  if (left !== undefined && right !== undefined) {
    if (near(left, right, tolerance)) return [];
    return [`${at}: ${left.toString()}, published ${right.toString()} +- ${tolerance}`];
  }
  return actual === expected ? [] : [`${at}: ${String(actual)}, published ${String(expected)}`];
}

/**
 * Compares everything named in `expected` with what the function answered.
 * Returns one line per difference, none when all agree; a name the answer lacks is a difference.
 */
export function differences(check: PublishedCheck, actual: Readonly<Record<string, unknown>>): string[] {
  return Object.entries(check.expected).flatMap(([name, expected]) =>
    Object.hasOwn(actual, name)
      ? compare(actual[name], expected, toleranceOf(check, name), name)
      : [`${name}: not answered`],
  );
}
