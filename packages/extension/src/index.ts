/**
 * The editor's client: starts the server, shows pictures beside the text, carries choices between the two. It knows the
 * messages of the protocol room and nothing of engine, language or drawings. Bundles start at activate-node.ts and
 * activate-web.ts; offered here is what can be used without an editor.
 */
export { KeptPicture } from './kept-picture.ts';
export { moveSpan, type SpanEdit } from './moved-spans.ts';
export { pageHtml } from './page-html.ts';
export { tabSeparated } from './tab-separated.ts';
