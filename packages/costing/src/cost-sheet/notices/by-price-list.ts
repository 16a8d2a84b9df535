import type { PriceOffer } from '../../price-list/index.ts';
import type { MaterialLine } from '../material-lines.ts';

const NAMED = 3;

/** Lines priced from one list together, with their names: "Ash 4/4, Oak 4/4, Glue and 2 more". */
export function byPriceList(lines: readonly MaterialLine[]): { offer: PriceOffer; names: string }[] {
  const lists = new Map<string, { offer: PriceOffer; names: Set<string> }>();
  for (const { offer, material } of lines) {
    const key = JSON.stringify([offer.supplier, offer.listDate, offer.listName, offer.validTo]);
    const known = lists.get(key);
    if (known) known.names.add(material.name);
    else lists.set(key, { offer, names: new Set([material.name]) });
  }
  return [...lists.values()].map(({ offer, names }) => {
    const all = [...names];
    const more = all.length - NAMED;
    const first = all.slice(0, more > 0 ? NAMED : all.length).join(', ');
    return { offer, names: more > 0 ? `${first} and ${more} more` : first };
  });
}
