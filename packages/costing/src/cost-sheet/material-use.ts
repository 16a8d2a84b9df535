import type { Figure } from '@scantling/figures';
import type { BaseUnit } from '@scantling/units';
import type { Material } from '../material/index.ts';

export type MaterialClass = 'direct-materials' | 'bought-in' | 'subcontract' | 'consumables';

/** One reason to need a material: a part, a component, a coat. */
export interface MaterialUse {
  readonly material: Material;
  readonly class: MaterialClass;
  readonly quantity: Figure<BaseUnit>;
  /** Field of the bill it comes from. */
  readonly field: string;
}
