export { bookSchedule } from './book-schedule.ts';
export { type MachineHourRate, machineHourRate } from './machine-hour-rate.ts';
export { RATE_LINE_KINDS, type RateLine, type RateLineKind } from './rate-line.ts';
export type { RateOptions } from './rate-options.ts';
export { type RecoveredByMachines, recoveredByMachines } from './recovered.ts';
export {
  ACQUISITIONS,
  type Acquisition,
  type Cutter,
  type Hire,
  RATE_BASES,
  type RateBasis,
  type ShopCosts,
  type Tool,
  type ToolDepreciation,
  type ToolHours,
} from './tool.ts';
export {
  REGISTER_AMOUNTS,
  type RegisterAmount,
  type RegisterRow,
  type ToolRegister,
  toolRegister,
} from './tool-register.ts';
