export {
  type BoardTally,
  type BoardTallyLine,
  boardTally,
  type CountedBoards,
  TALLY_ROUNDINGS,
  type TallyRounding,
} from './board-tally.ts';
