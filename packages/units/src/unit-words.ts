import type { BaseUnit, Unit } from './unit.ts';

interface UnitWords {
  readonly words: string;
  /** Decimal places a maker reads at most; a hundredth of a millimetre is below any saw. */
  readonly places: number;
}

const UNITS: Readonly<Record<BaseUnit, UnitWords>> = {
  money: { words: '', places: 2 },
  ratio: { words: '', places: 4 },
  h: { words: 'h', places: 2 },
  year: { words: 'years', places: 1 },
  mm: { words: 'mm', places: 2 },
  m: { words: 'm', places: 3 },
  in: { words: 'in', places: 3 },
  ft: { words: 'ft', places: 3 },
  mm2: { words: 'mm²', places: 0 },
  m2: { words: 'm²', places: 3 },
  ft2: { words: 'ft²', places: 2 },
  mm3: { words: 'mm³', places: 0 },
  m3: { words: 'm³', places: 4 },
  'bd ft': { words: 'bd ft', places: 2 },
  MBF: { words: 'MBF', places: 4 },
  'lin ft': { words: 'lin ft', places: 2 },
  'lin m': { words: 'lin m', places: 3 },
  sheet: { words: 'sheet', places: 2 },
  each: { words: 'each', places: 2 },
  pack: { words: 'pack', places: 2 },
  piece: { words: 'piece', places: 2 },
  l: { words: 'l', places: 3 },
  gal: { words: 'gal', places: 3 },
  kg: { words: 'kg', places: 2 },
  lb: { words: 'lb', places: 2 },
  kW: { words: 'kW', places: 2 },
  kWh: { words: 'kWh', places: 2 },
  coat: { words: 'coat', places: 0 },
  mil: { words: 'mil', places: 2 },
  um: { words: 'µm', places: 0 },
};

function isBaseUnit(unit: string): unit is BaseUnit {
  return Object.hasOwn(UNITS, unit);
}

function partsOf(unit: Unit): { over: string; per: string | null } {
  const at = unit.indexOf('/');
  return at < 0 ? { over: unit, per: null } : { over: unit.slice(0, at), per: unit.slice(at + 1) };
}

/** The unit as written beside a number: "bd ft", "per h" for money per hour, "h per year"; '' for pure numbers. */
export function unitWords(unit: Unit): string {
  const { over, per } = partsOf(unit);
  const first = isBaseUnit(over) ? UNITS[over].words : over;
  if (per === null) return first;
  const second = per === 'ratio' ? '1' : per === 'year' ? 'year' : isBaseUnit(per) ? UNITS[per].words : per;
  return first === '' ? `per ${second}` : `${first} per ${second}`;
}

/** Decimal places shown at most for a unit; a rate keeps two more than its upper unit. */
export function placesOf(unit: Unit): number {
  const { over, per } = partsOf(unit);
  const places = isBaseUnit(over) ? UNITS[over].places : 2;
  return per === null ? places : places + 2;
}
