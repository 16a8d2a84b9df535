import type { WorkedCostSheet } from '@scantling/contracts';

type Column = WorkedCostSheet['columns'][number];

/** One line of the comparison of quantities. `figure` is null where the figure has no meaning (margin of nothing). */
export interface ClassRow {
  readonly id: string;
  readonly label: string;
  /** What it is or rests on, in a few words. */
  readonly note: string;
  readonly isTotal: boolean;
  readonly isShare: boolean;
  /** Decimal places where the unit would allow more than a column can align. */
  readonly places?: number;
  readonly figure: (column: Column) => string | null;
}

function row(id: string, label: string, note: string, figure: ClassRow['figure']): ClassRow {
  return { id, label, note, isTotal: false, isShare: false, figure };
}

function total(id: string, label: string, note: string, figure: ClassRow['figure']): ClassRow {
  return { ...row(id, label, note, figure), isTotal: true };
}

function share(id: string, label: string, note: string, figure: ClassRow['figure']): ClassRow {
  return { ...row(id, label, note, figure), isShare: true };
}

const PLACES_OF_HOURS = 2;

function timed(id: string, label: string, note: string, figure: ClassRow['figure']): ClassRow {
  return { ...row(id, label, note, figure), places: PLACES_OF_HOURS };
}

/** From the first direct cost to the price, in the order in which classes of cost add up. */
export const COST_ROWS: readonly ClassRow[] = [
  row('directMaterials', 'Direct materials', '', ({ classes }) => classes.directMaterials),
  row('boughtIn', 'Bought-in components', '', ({ classes }) => classes.boughtIn),
  row('directLabour', 'Direct labour', '', ({ classes }) => classes.directLabour),
  row('subcontract', 'Bought services', '', ({ classes }) => classes.subcontract),
  total('primeCost', 'Prime cost', '', ({ classes }) => classes.primeCost),
  row('machines', 'Machines', '', ({ classes }) => classes.machines),
  row('consumables', 'Consumables', '', ({ classes }) => classes.consumables),
  row('workshopOverhead', 'Workshop overhead', '', ({ classes }) => classes.workshopOverhead),
  total('worksCost', 'Works cost', '', ({ classes }) => classes.worksCost),
  row(
    'administrationOverhead',
    'Administration overhead',
    '',
    ({ classes }) => classes.administrationOverhead,
  ),
  row('freight', 'Freight to the client', '', ({ classes }) => classes.freight),
  row('contingency', 'Contingency', '', ({ classes }) => classes.contingency),
  total('costOfProduction', 'Cost of production', '', ({ classes }) => classes.costOfProduction),
  row('profit', 'Profit', '', ({ price }) => price.profit),
  total('netPrice', 'Net price', 'after discount, before tax', ({ price }) => price.netPrice),
  row('listPrice', 'List price', 'before discount', ({ price }) => price.listPrice),
];

/** What the price leaves, and the same per piece. */
export const PRICE_ROWS: readonly ClassRow[] = [
  total('piecePrice', 'Price per piece', '', ({ perPiece }) => perPiece.price),
  row('pieceCost', 'Cost per piece', '', ({ perPiece }) => perPiece.cost),
  timed('pieceHours', 'Hours per piece', '', ({ perPiece }) => perPiece.hours),
  share('margin', 'Margin', 'profit on the net price', ({ price }) => price.margin),
  share('markup', 'Markup', 'profit on the cost', ({ price }) => price.markup),
  timed(
    'hourlyEarnings',
    'Hourly earnings',
    'what each of your hours brings',
    ({ price }) => price.hourlyEarnings,
  ),
  row('floorPrice', 'Floor price', 'at this price you earn 0 an hour', ({ price }) => price.floorPrice),
  timed('ownerHours', 'Your hours', 'quoting, buying and delivery included', ({ hours }) => hours.owner),
  timed('workHours', 'Hours of work', 'all hands', ({ hours }) => hours.work),
  timed('machineHours', 'Hours of machines', '', ({ hours }) => hours.machine),
  timed(
    'elapsedHours',
    'Elapsed hours',
    'glue and drying, in which nobody works',
    ({ hours }) => hours.elapsed,
  ),
];

/** "1 piece", "5 pieces". */
export function piecesWords(quantity: number): string {
  return quantity === 1 ? '1 piece' : `${quantity} pieces`;
}
