import type { DifferenceStep, FigureTable, LinePart } from '@scantling/figures';
import type { CostingBasis } from '../cost-sheet/index.ts';

interface MaterialLine {
  readonly code: string;
  readonly name: string;
  readonly class: 'direct-materials' | 'bought-in' | 'subcontract' | 'consumables';
  readonly supplier: string;
  readonly charged: string;
}

interface FreightLine {
  readonly supplier: string;
  readonly name: string;
  readonly class: MaterialLine['class'];
  readonly charged: string;
}

interface WorkLine {
  readonly id: string;
  readonly name: string;
  readonly grade: string;
  readonly isOwner: boolean;
  readonly machine: string | null;
  readonly hours: string;
  readonly machineHours: string | null;
  readonly labour: string;
  readonly machineCost: string | null;
}

/** One side of a comparison: a worked-out sheet at one number of pieces; what is text in a line is a figure's id. */
export interface ComparedColumn {
  /** With derivations. */
  readonly figures: FigureTable;
  readonly basis: CostingBasis;
  readonly classes: Readonly<
    Record<
      | 'directMaterials'
      | 'boughtIn'
      | 'subcontract'
      | 'consumables'
      | 'directLabour'
      | 'machines'
      | 'costOfProduction',
      string
    >
  >;
  readonly hours: Readonly<Record<'work' | 'machine' | 'owner', string>>;
  readonly price: { readonly netPrice: string };
  readonly materials: readonly MaterialLine[];
  readonly freightIn: readonly FreightLine[];
  readonly work: readonly WorkLine[];
}

/** A line of one side: what it adds to which sums, and what makes it another line where it differs. */
interface Line {
  readonly label: string;
  readonly parts: Readonly<Record<string, LinePart>>;
  readonly chosen: Readonly<Record<string, string>>;
}

const CLASS_SUMS = {
  'direct-materials': 'directMaterials',
  'bought-in': 'boughtIn',
  subcontract: 'subcontract',
  consumables: 'consumables',
} as const;

function linesOf({ classes, hours, materials, freightIn, work }: ComparedColumn): Map<string, Line> {
  const lines = new Map<string, Line>();
  for (const { code, name, class: kind, charged, supplier } of materials)
    lines.set(`material/${kind}/${code}`, {
      label: name,
      parts: { charged: { line: charged, into: classes[CLASS_SUMS[kind]] } },
      chosen: { supplier },
    });
  for (const { supplier, name, class: kind, charged } of freightIn)
    lines.set(`freight/${supplier}`, {
      label: `${name}: freight of an order`,
      parts: { charged: { line: charged, into: classes[CLASS_SUMS[kind]] } },
      chosen: {},
    });
  for (const one of work)
    lines.set(`work/${one.id}`, {
      label: one.name,
      parts: {
        labour: { line: one.labour, into: classes.directLabour },
        hours: { line: one.hours, into: hours.work },
        ...(one.isOwner ? { owner: { line: one.hours, into: hours.owner } } : {}),
        ...(one.machineCost === null ? {} : { machine: { line: one.machineCost, into: classes.machines } }),
        ...(one.machineHours === null
          ? {}
          : { machineHours: { line: one.machineHours, into: hours.machine } }),
      },
      chosen: { grade: one.grade, machine: one.machine ?? 'none' },
    });
  return lines;
}

/** A line of the sheets with what became of it, as a step of the difference. */
export interface LineStep {
  readonly key: string;
  readonly label: string;
  readonly why: string;
  readonly step: DifferenceStep;
}

function whyOf(was: Line | undefined, now: Line | undefined, isOtherBasis: boolean): string {
  if (was === undefined) return 'a line that came';
  if (now === undefined) return 'a line that went';
  const others = Object.keys(now.chosen).filter((what) => was.chosen[what] !== now.chosen[what]);
  const words = others.map((what) => `another ${what}: ${was.chosen[what]}, now ${now.chosen[what]}`);
  if (words.length > 0) return words.join('; ');
  return isOtherBasis ? 'another basis' : 'worked out in another way';
}

/** Every line of either column by its key, in the order of the keys, which is the same read from either side. */
export function lineSteps(was: ComparedColumn, now: ComparedColumn): LineStep[] {
  const [before, after] = [linesOf(was), linesOf(now)];
  const keys = [...new Set([...after.keys(), ...before.keys()])].sort();
  return keys.map((key) => {
    const [old, current] = [before.get(key), after.get(key)];
    const names = [
      ...new Set([...Object.keys(old?.parts ?? {}), ...Object.keys(current?.parts ?? {})]),
    ].sort();
    return {
      key,
      label: (current ?? old)?.label ?? key,
      why: whyOf(old, current, was.basis !== now.basis),
      step: {
        kind: 'line',
        parts: names.map((name) => ({
          ...(old?.parts[name] === undefined ? {} : { was: old.parts[name] }),
          ...(current?.parts[name] === undefined ? {} : { now: current.parts[name] }),
        })),
      },
    };
  });
}
