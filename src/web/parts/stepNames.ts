export { stepWords as stepNames } from '../../core/book/words.ts';
