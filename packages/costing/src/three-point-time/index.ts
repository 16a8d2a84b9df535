export { type ThreePointTime, threePointMean } from './three-point-mean.ts';
