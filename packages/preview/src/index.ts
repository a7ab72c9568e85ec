/**
 * The page in the preview panel. It is given pictures by message and shows them; it knows the messages of the protocol
 * room and nothing of engine, language or extension. Its bundle starts at page.ts; offered here is what needs no page.
 */
export { isArrow, stepTo } from './part-steps.ts';
