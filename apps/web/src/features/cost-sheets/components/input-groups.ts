import { isShopWide, type LeafHome, leafHome } from '@scantling/contracts';
import type { FigureNode, FigureTable } from '@scantling/figures';
import { canTry } from '../../figures/leaf-text.ts';

type Kind = LeafHome['kind'];

/** Where inputs come from, in the order in which they are looked for. */
const GROUPS: readonly { readonly title: string; readonly kinds: readonly Kind[] }[] = [
  { title: 'Terms of this sheet', kinds: ['terms'] },
  { title: 'Bill of materials', kinds: ['design', 'design-parameter'] },
  { title: 'Prices', kinds: ['price'] },
  { title: 'Labour', kinds: ['labour-grade'] },
  { title: 'Materials', kinds: ['material'] },
  { title: 'Tools', kinds: ['tool'] },
  { title: 'Workshop and overhead', kinds: ['workshop', 'overhead-amount'] },
  { title: 'Suppliers and exchange rates', kinds: ['supplier', 'exchange-rate'] },
  { title: 'Price breaks, packs, numbers in formulas, and what is worked out', kinds: ['nowhere'] },
];

export interface InputGroup {
  readonly title: string;
  /** Other designs and cost sheets rest on these too. */
  readonly isShopWide: boolean;
  readonly leaves: readonly FigureNode[];
}

/** Every input of a sheet for which another value can be tried, grouped by where it comes from. */
export function inputGroups(table: FigureTable): InputGroup[] {
  const leaves = Object.values(table).filter(canTry);
  const homes = new Map(leaves.map((leaf) => [leaf.id, leafHome(leaf.id)]));
  return GROUPS.map(({ title, kinds }) => {
    const own = leaves.filter(({ id }) => kinds.includes(homes.get(id)?.kind ?? 'nowhere'));
    const first = own[0] && homes.get(own[0].id);
    return { title, isShopWide: first !== undefined && isShopWide(first), leaves: own };
  }).filter(({ leaves: own }) => own.length > 0);
}

/** Those in whose name or source every word stands. */
export function foundInputs(groups: readonly InputGroup[], search: string): InputGroup[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [...groups];
  return groups
    .map((group) => ({
      ...group,
      leaves: group.leaves.filter(({ label, source }) => {
        const text = `${label} ${source?.text ?? ''}`.toLowerCase();
        return words.every((word) => text.includes(word));
      }),
    }))
    .filter(({ leaves }) => leaves.length > 0);
}
