export { firstUnitFrom, type KnownTime, learningRateFrom } from './back-solve.ts';
export {
  LEARNING_MODELS,
  type LearningCurve,
  type LearningFigures,
  type LearningModel,
  type LearningTimes,
  learningTimes,
  learningTotal,
  learningUnit,
  readLearningCurve,
} from './learning-curve.ts';
