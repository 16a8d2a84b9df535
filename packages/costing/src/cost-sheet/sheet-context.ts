import { decimal } from '@scantling/decimals';
import { derive, type Figure, input, type LeafBounds, type Source } from '@scantling/figures';
import { isMoneyUnit, type Unit } from '@scantling/units';
import type { Assembly } from '../bill-of-materials/index.ts';
import { CostingInputError } from '../input-error.ts';
import type { Material, MaterialForm } from '../material/index.ts';
import { OfferTiers } from '../price-list/index.ts';
import type { FormDefaults, SizedSheetInput } from './cost-sheet-input.ts';
import { MaterialLeaves } from './material-leaves.ts';

/** Looks things up by code and makes each leaf once, so that a shared input stands once in the sheet. */
export class SheetContext {
  readonly input: SizedSheetInput;
  readonly offerTiers = new OfferTiers();
  readonly #leaves = new Map<string, Figure>();
  readonly #materialLeaves = new MaterialLeaves();
  readonly #assemblies = new Map<string, Assembly>();
  readonly #materials = new Map<string, Material>();
  readonly #families = new Map<string, Material[]>();

  readonly #workedOut: ReadonlyMap<string, Figure>;

  /** @param workedOut figures of the bill's fields that formulas fill, by the key of the leaf they stand in for */
  constructor(given: SizedSheetInput, workedOut: ReadonlyMap<string, Figure> = new Map()) {
    this.input = given;
    this.#workedOut = workedOut;
    for (const assembly of given.bill.assemblies) this.#assemblies.set(assembly.id, assembly);
    for (const material of given.materials) {
      this.#materials.set(material.code, material);
      if (material.family === undefined) continue;
      const family = this.#families.get(material.family);
      if (family) family.push(material);
      else this.#families.set(material.family, [material]);
    }
    const thickness = (material: Material) => decimal(material.surfacedThickness ?? material.thickness ?? 0);
    for (const family of this.#families.values())
      family.sort((a, b) => thickness(a).comparedTo(thickness(b)));
  }

  /** @throws CostingInputError naming the field when there is no such material */
  material(code: string, field: string): Material {
    const found = this.#materials.get(code);
    if (found) return found;
    throw new CostingInputError(
      field,
      `names the material "${code}", which is not there`,
      'enter the material or correct the code',
    );
  }

  assembly(id: string): Assembly | undefined {
    return this.#assemblies.get(id);
  }

  /** The material of that code, or the members of that family, thinnest first. */
  candidates(code: string, field: string): readonly Material[] {
    const family = this.#families.get(code);
    if (family === undefined || this.#materials.has(code)) return [this.material(code, field)];
    return family;
  }

  defaults(form: MaterialForm): FormDefaults {
    return this.input.rates.defaults[form] ?? NO_ALLOWANCES;
  }

  /** A leaf with that key, made at the first asking. */
  leaf<U extends Unit>(
    key: string,
    label: string,
    unit: U,
    value: string,
    source: Source,
    bounds?: LeafBounds,
  ): Figure<U> {
    const known = this.#leaves.get(key);
    if (known) return known as Figure<U>;
    const made = input({
      key,
      label,
      unit,
      value,
      source,
      ...(isMoneyUnit(unit) ? { currency: this.input.currency } : {}),
      ...(bounds === undefined ? {} : { bounds }),
    });
    this.#leaves.set(key, made);
    return made;
  }

  /** True where a formula of the design fills the field. */
  isWorkedOut(key: string): boolean {
    return this.#workedOut.has(key);
  }

  /** A number that the bill of materials states, or that a formula of it comes to. */
  fromBill<U extends Unit>(
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ): Figure<U> {
    const leafKey = `bill/${key}`;
    const known = this.#leaves.get(leafKey);
    if (known) return known as Figure<U>;
    const worked = this.#workedOut.get(key);
    if (worked !== undefined) {
      // A count of screws is a number in the formula and "each" in the bill.
      const figure =
        worked.unit === unit ? { ...worked, label, unit } : derive(label, unit, 'same', [worked]);
      this.#leaves.set(leafKey, figure);
      return figure;
    }
    return this.leaf(
      `bill/${key}`,
      label,
      unit,
      value,
      {
        kind: 'bill-of-materials',
        text: `bill of materials, ${key}`,
        record: `bill:${key}`,
      },
      bounds,
    );
  }

  /** A number from the record of a material. */
  fromMaterial<U extends Unit>(
    material: Material,
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ): Figure<U> {
    return this.#materialLeaves.fromMaterial(material, key, label, unit, value, bounds);
  }

  /** One of the shop's default allowances. */
  allowance<U extends Unit>(
    form: MaterialForm,
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ): Figure<U> {
    return this.leaf(
      `allowance/${form}/${key}`,
      label,
      unit,
      value,
      {
        kind: 'standard-allowance',
        text: `the workshop's allowance for ${form.replace('-', ' ')}`,
        record: 'workshop:settings',
      },
      bounds,
    );
  }

  /** A number agreed for this piece. */
  fromTerms<U extends Unit>(
    key: string,
    label: string,
    unit: U,
    value: string,
    bounds?: LeafBounds,
  ): Figure<U> {
    return this.leaf(
      `terms/${key}`,
      label,
      unit,
      value,
      {
        kind: 'entered',
        text: 'terms of this cost sheet',
      },
      bounds,
    );
  }
}

const NO_ALLOWANCES: FormDefaults = {
  lengthAllowance: '0',
  widthAllowance: '0',
  thicknessAllowance: '0',
  yieldFactor: '1',
  offcutValueShare: '0',
};
