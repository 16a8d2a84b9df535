export { type Resawing, type ResawnLeaves, resaw } from './resaw.ts';
