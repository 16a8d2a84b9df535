import {
  PRICING_UNIT_IDS,
  PRICING_UNITS,
  type PricingUnit,
  type PricingUnitId,
} from './pricing-units/index.ts';

/** Thrown when a text names no unit a price can be per. */
export class UnknownPricingUnitError extends Error {
  readonly code = 'unknown-pricing-unit';
  constructor(readonly text: string) {
    const known = PRICING_UNIT_IDS.map((id) => PRICING_UNITS[id].symbol).join(', ');
    super(`"${text}" is no pricing unit: use one of ${known}`);
    this.name = 'UnknownPricingUnitError';
  }
}

/** Packs whose name says how many they hold. */
const CONTENT_OF_NAME: Readonly<Record<string, number>> = {
  pair: 2,
  pairs: 2,
  pr: 2,
  prs: 2,
  dozen: 12,
  doz: 12,
  dz: 12,
};

/** "EUR / m³" and "per m3" become "m3": what follows the last slash, bare of spaces, dots, dashes and case. */
function bare(text: string): string {
  return text
    .toLowerCase()
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/^.*\//, '')
    .trim()
    .replace(/^per\s+/, '')
    .replace(/[\s.\-_]/g, '');
}

const BY_ALIAS: ReadonlyMap<string, PricingUnitId> = new Map(
  PRICING_UNIT_IDS.flatMap((id) => {
    const unit: PricingUnit = PRICING_UNITS[id];
    return [unit.id, unit.label, unit.symbol, unit.code, ...unit.aliases].map(
      (name) => [bare(name), id] as const,
    );
  }),
);

/**
 * The pricing unit an imported file means ("/BF", "m³", "EUR/m2", "sht", "LTR").
 * @throws UnknownPricingUnitError
 */
export function readPricingUnit(text: string): (typeof PRICING_UNITS)[PricingUnitId] {
  const id = BY_ALIAS.get(bare(text));
  if (id === undefined) throw new UnknownPricingUnitError(text);
  return PRICING_UNITS[id];
}

/** How many a pack of this name holds when the name itself says so ("pr" 2, "dozen" 12), else undefined. */
export function packContentNamed(text: string): number | undefined {
  const name = bare(text);
  return Object.hasOwn(CONTENT_OF_NAME, name) ? CONTENT_OF_NAME[name] : undefined;
}
