import { evaluateDocument, type PlacedFinding } from '@fettle/language';
import fc from 'fast-check';
import { type LangiumDocument, URI } from 'langium';
import { afterAll, expect, test } from 'vitest';
import { cutAndSpliced } from './cut-and-splice.ts';
import { services, textAfter } from './harness/workbench.ts';
import { shop } from './sideboard.ts';

/** Whatever is made of the examples, it is evaluated, and every place that is spoken of lies in the text. */

const { LangiumDocumentFactory, LangiumDocuments } = services.shared.workspace;
const shopDocument = LangiumDocumentFactory.fromString(shop, URI.parse('file:///spliced/shop.fettle'));
LangiumDocuments.addDocument(shopDocument);

/** 20,000 in continuous integration, 2,000 while working, as many as one likes with `npm run fuzz`. */
const runs = Number(process.env['FETTLE_FUZZ_RUNS'] ?? (process.env['CI'] ? 20_000 : 2000));

let slowest = { milliseconds: 0, text: '' };
let made = 0;
afterAll(() =>
  console.log(`${made} spliced texts, none threw; the slowest took ${slowest.milliseconds.toFixed(0)} ms`),
);

function spliced(text: string): LangiumDocument {
  return LangiumDocumentFactory.fromString(text, URI.parse('file:///spliced/piece.fettle'));
}

test('every finding and every fix lies inside its text', { timeout: 24 * 3_600_000 }, () => {
  fc.assert(
    fc.property(cutAndSpliced(5), (text) => {
      made++;
      const start = performance.now();
      const document = spliced(text);
      const { findings, pieces } = evaluateDocument(services, document);
      const milliseconds = performance.now() - start;
      if (milliseconds > slowest.milliseconds) slowest = { milliseconds, text };
      for (const finding of findings) expectInside(finding, document);
      for (const piece of pieces) {
        expect(piece.range.start).toBeLessThanOrEqual(piece.range.end);
        expect(piece.range.end).toBeLessThanOrEqual(text.length);
      }
    }),
    { numRuns: runs },
  );
});

test('every fix can be taken, and what it leaves is evaluated', { timeout: 600_000 }, () => {
  fc.assert(
    fc.property(cutAndSpliced(3), fc.nat(), (text, choice) => {
      const document = spliced(text);
      const fixes = evaluateDocument(services, document).findings.flatMap((finding) => finding.fixes);
      const fix = fixes[choice % Math.max(fixes.length, 1)];
      if (fix === undefined) return;
      const own = fix.edits.filter((edit) => edit.uri === document.uri.toString());
      const after = textAfter(
        document,
        own.map((edit) => ({
          range: {
            start: document.textDocument.positionAt(edit.start),
            end: document.textDocument.positionAt(edit.end),
          },
          newText: edit.text,
        })),
      );
      expect(() => evaluateDocument(services, spliced(after))).not.toThrow();
    }),
    { numRuns: 300 },
  );
});

function expectInside(finding: PlacedFinding, document: LangiumDocument): void {
  expect(finding.sentence).not.toMatch(/undefined|NaN|\[object/);
  const edits = finding.fixes.flatMap((fix) => fix.edits);
  for (const { uri, start, end } of [finding, ...finding.related, ...edits]) {
    const home = uri === document.uri.toString() ? document : LangiumDocuments.getDocument(URI.parse(uri));
    const length = home?.textDocument.getText().length ?? -1;
    expect(start).toBeGreaterThanOrEqual(0);
    expect(start).toBeLessThanOrEqual(end);
    expect(end).toBeLessThanOrEqual(length);
  }
}
