export { quotePaper } from './quote-paper.ts';
