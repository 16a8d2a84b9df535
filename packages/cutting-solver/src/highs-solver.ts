import type {
  IntegerLimits,
  IntegerProgram,
  IntegerSolution,
  LinearModel,
  LinearSolver,
} from '@scantling/cutting';
import loadHighs, { type Highs } from 'highs';
import { HighsModel } from './highs-model.ts';

function endOf(highs: Highs, status: number): IntegerSolution['endedBy'] {
  const { optimal, infeasible, timeLimit } = highs.constants.modelStatus;
  if (status === optimal || status === infeasible) return 'proof';
  return status === timeLimit ? 'clock' : 'work';
}

function solveInteger(
  highs: Highs,
  { rows, columns }: IntegerProgram,
  limits: IntegerLimits,
): IntegerSolution {
  const model = highs.createModel();
  try {
    model.options.set({
      output_flag: false,
      mip_max_nodes: limits.nodes,
      time_limit: Math.max(0.05, limits.seconds),
      mip_rel_gap: 0,
      mip_abs_gap: limits.gap,
      random_seed: 1,
    });
    for (const { lower, upper } of rows) model.addRow(lower, upper, { indices: [], values: [] });
    columns.forEach(({ cost, upper, rows: indices, values }, index) => {
      model.addCol(cost, 0, upper, { indices: [...indices], values: [...values] });
      model.changeColIntegrality(index, highs.constants.variableType.integer);
    });
    if (columns.some(({ start }) => start !== undefined))
      model.setSolution({
        indices: columns.map((_, index) => index),
        values: columns.map(({ start }) => start ?? 0),
      });
    model.run();
    const endedBy = endOf(highs, model.getModelStatus());
    const bound = Number(model.raw.getInfoValue('mip_dual_bound').value);
    const hasSolution =
      Number(model.raw.getInfoValue('primal_solution_status').value) === FEASIBLE &&
      model.getModelStatus() !== highs.constants.modelStatus.infeasible;
    const values = hasSolution ? Array.from(model.getSolution().colValue, Math.round) : null;
    return { values, bound: Number.isFinite(bound) ? bound : Number.NEGATIVE_INFINITY, endedBy };
  } finally {
    model.dispose();
  }
}

/** The solution status of HiGHS that says that its values keep all bounds. */
const FEASIBLE = 2;

/** HiGHS in WebAssembly as the planner's solver. It works on the thread that asks, without pause. */
export async function loadSolver(): Promise<LinearSolver> {
  const highs = await loadHighs();
  return {
    createModel: (): LinearModel => new HighsModel(highs),
    solveInteger(program, limits) {
      try {
        return solveInteger(highs, program, limits);
      } catch {
        // HiGHS gives up on some models after very many runs; the search goes on without this answer.
        return { values: null, bound: Number.NEGATIVE_INFINITY, endedBy: 'work' };
      }
    },
  };
}
