import {
  complement,
  derive,
  difference,
  divide,
  type Figure,
  greatest,
  named,
  number,
  SHARE_BOUNDS,
  scale,
  sum,
} from '@scantling/figures';
import { type BaseUnit, PRICING_UNITS } from '@scantling/units';
import type { Material } from '../material/index.ts';
import type { PriceOffer } from '../price-list/index.ts';
import type { MaterialClass, MaterialUse } from './material-use.ts';
import { priceForNeed } from './price-for-need.ts';
import type { SheetContext } from './sheet-context.ts';
import { inPriceUnit, useUnit } from './use-quantity.ts';

const ZERO = number(0);

/** One material of the sheet: needed, used, bought, and who pays for the difference. */
export interface MaterialLine {
  readonly material: Material;
  readonly class: MaterialClass;
  readonly offer: PriceOffer;
  /** Why this price. */
  readonly rule: string;
  /** In parts, before any waste, in the unit of use. */
  readonly needed: Figure<BaseUnit>;
  /** Taken from what is bought, with waste, in the purchase unit. */
  readonly used: Figure<BaseUnit>;
  readonly bought: Figure<BaseUnit>;
  readonly boughtCost: Figure<'money'>;
  readonly usedCost: Figure<'money'>;
  /** What the piece pays. charged + offcut + loss = bought, always. */
  readonly charged: Figure<'money'>;
  readonly offcutValue: Figure<'money'>;
  readonly loss: Figure<'money'>;
}

/** A material that nothing prices: the sheet is worked out without it, and says so. */
export interface UnpricedMaterial {
  readonly material: Material;
  /** The first field of the bill that names it. */
  readonly field: string;
  readonly needed: Figure<BaseUnit>;
  readonly why: string;
}

export interface MaterialLines {
  readonly lines: readonly MaterialLine[];
  readonly unpriced: readonly UnpricedMaterial[];
}

/** The materials of so many pieces, one line per material and class, in the order the bill first names them. */
export function materialLines(uses: readonly MaterialUse[], sheet: SheetContext): MaterialLines {
  const groups = new Map<string, MaterialUse[]>();
  for (const use of uses) {
    const key = `${use.class}\n${use.material.code}`;
    const group = groups.get(key);
    if (group) group.push(use);
    else groups.set(key, [use]);
  }
  const lines: MaterialLine[] = [];
  const unpriced: UnpricedMaterial[] = [];
  for (const group of groups.values()) {
    const made = materialLine(group, sheet);
    if ('why' in made) unpriced.push(made);
    else lines.push(made);
  }
  return { lines, unpriced };
}

function materialLine(uses: readonly MaterialUse[], sheet: SheetContext): MaterialLine | UnpricedMaterial {
  const [first] = uses;
  if (first === undefined) throw new RangeError('a material line needs a use');
  const { material } = first;
  const needed = sum<BaseUnit>(
    `${material.name}: needed`,
    useUnit(material.form),
    uses.map((use) => use.quantity),
  );
  const taken = withWaste(material, needed, sheet);
  const price = priceForNeed(
    material,
    sheet.input,
    (unit) => inPriceUnit(material, taken, unit, sheet),
    sheet.offerTiers,
  );
  if (price === null) return { material, field: first.field, needed, why: whyNoPrice(material, sheet) };
  const { used, bought } = price;
  const usedCost = derive(`${material.name}: used`, 'money', 'product', [bought.unitCost, used]);
  return {
    material,
    class: first.class,
    offer: price.offer,
    rule: price.rule,
    needed,
    used,
    bought: bought.quantity,
    boughtCost: bought.cost,
    usedCost,
    ...whoPays(material, bought.cost, usedCost, price.rule, sheet),
  };
}

/** "Waste w of what is bought": need / yield. Things that are counted have none. */
function withWaste(material: Material, needed: Figure<BaseUnit>, sheet: SheetContext): Figure<BaseUnit> {
  const { form } = material;
  if (form === 'each' || form === 'pack' || form === 'service') return needed;
  const share =
    material.yieldFactor === undefined
      ? sheet.allowance(
          form,
          'yield',
          `yield of ${form.replace('-', ' ')}: need as a share of what is bought`,
          'ratio',
          sheet.defaults(form).yieldFactor,
          SHARE_BOUNDS,
        )
      : sheet.fromMaterial(
          material,
          'yield',
          `${material.name}: yield, need as a share of what is bought`,
          'ratio',
          material.yieldFactor,
          SHARE_BOUNDS,
        );
  return share.value.eq(1) ? needed : divide(`${material.name}: with waste`, needed, share);
}

function whoPays(
  material: Material,
  bought: Figure<'money'>,
  used: Figure<'money'>,
  rule: string,
  sheet: SheetContext,
) {
  const left = greatest(
    `${material.name}: left over, at cost`,
    difference('bought less used', bought, used),
    scale('nothing', bought, ZERO),
  );
  if (sheet.input.basis === 'commission') {
    return {
      charged: named(`${material.name}: charged, all that is bought`, bought, rule),
      offcutValue: scale(`${material.name}: leftover paid by the client, to stock at nil`, left, ZERO),
      loss: scale(`${material.name}: loss`, left, ZERO),
    };
  }
  const share =
    material.offcutValueShare === undefined
      ? sheet.allowance(
          material.form,
          'offcut-value',
          `value of leftover ${material.form.replace('-', ' ')}, share of its cost`,
          'ratio',
          sheet.defaults(material.form).offcutValueShare,
          SHARE_BOUNDS,
        )
      : sheet.fromMaterial(
          material,
          'offcut-value',
          `${material.name}: value of leftovers, share of their cost`,
          'ratio',
          material.offcutValueShare,
          SHARE_BOUNDS,
        );
  return {
    charged: named(`${material.name}: charged, what is used`, used, rule),
    offcutValue: scale(`${material.name}: leftover to stock`, left, share),
    loss: scale(`${material.name}: loss carried by the workshop`, left, complement('share lost', share)),
  };
}

function whyNoPrice(material: Material, sheet: SheetContext): string {
  if (material.offers.length === 0) return 'no supplier has a price for it';
  const units = [...new Set(material.offers.map((offer) => PRICING_UNITS[offer.unit].label))].join(', ');
  const { onDate, currency } = sheet.input;
  return `none of its ${material.offers.length} prices (per ${units}) can be compared with ${useUnit(material.form)} in ${currency} on ${onDate}`;
}
