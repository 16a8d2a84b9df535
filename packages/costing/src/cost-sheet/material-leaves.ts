import { type Figure, input, type LeafBounds } from '@scantling/figures';
import type { Unit } from '@scantling/units';
import type { Material } from '../material/index.ts';

/** The numbers of materials' records as leaves, each made once. */
export class MaterialLeaves {
  readonly #made = new Map<string, Figure>();

  /** A number from the record of a material. */
  fromMaterial<U extends Unit>(
    material: Material,
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ): Figure<U> {
    const id = `material/${material.code}/${key}`;
    const known = this.#made.get(id);
    if (known) return known as Figure<U>;
    const made = input({
      key: id,
      label,
      unit,
      value,
      source: {
        kind: 'shop-rate',
        text: `material record ${material.code}`,
        record: `material:${material.code}`,
      },
      ...(bounds === undefined ? {} : { bounds }),
    });
    this.#made.set(id, made);
    return made;
  }
}
