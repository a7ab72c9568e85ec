import { evaluateDocument } from '@fettle/language';
import { URI } from 'langium';
import { beforeAll, describe, expect, test } from 'vitest';
import { services } from './harness/workbench.ts';
import { example } from './sideboard.ts';

/** What an edit costs is counted in pieces that are worked out again, never timed. */

const { LangiumDocumentFactory, LangiumDocuments } = services.shared.workspace;
const evaluator = services.evaluation.DocumentEvaluator;
const wall = example('wall.fettle').text;
const home = URI.parse('file:///counted/wall.fettle');

function piecesWorkedOut(text: string): number {
  const before = evaluator.evaluations;
  if (LangiumDocuments.hasDocument(home)) LangiumDocuments.deleteDocument(home);
  const document = LangiumDocumentFactory.fromString(text, home);
  LangiumDocuments.addDocument(document);
  const { pieces } = evaluateDocument(services, document);
  expect(pieces).toHaveLength(40);
  return evaluator.evaluations - before;
}

describe('a wall of forty cases', () => {
  beforeAll(() => {
    LangiumDocuments.addDocument(
      LangiumDocumentFactory.fromString(example('shop.fettle').text, URI.parse('file:///counted/shop.fettle')),
    );
    piecesWorkedOut(wall);
  });

  test('the same text again works out nothing', () => {
    expect(piecesWorkedOut(wall)).toBe(0);
  });

  test('a line above everything works out nothing', () => {
    expect(piecesWorkedOut(`\n// on the north wall\n${wall}`)).toBe(0);
  });

  test('an edit of one case works out that case', () => {
    expect(piecesWorkedOut(wall)).toBe(0);
    expect(wall).toContain('piece "Base 1" from "drawer base" with "width" 18');
    const edited = wall.replace('piece "Base 1" from "drawer base" with "width" 18', () => {
      return 'piece "Base 1" from "drawer base" with "width" 19';
    });
    expect(piecesWorkedOut(edited)).toBe(1);
    expect(piecesWorkedOut(wall)).toBe(1);
  });

  test('an edit of a pattern works out the cases made from it, and no others', () => {
    const made = wall.split('\n').filter((line) => /^piece .*from "cupboard"/.test(line)).length;
    expect(made).toBeGreaterThan(1);
    const edited = wall.replace('takes "height" or 30', 'takes "height" or 31');
    expect(piecesWorkedOut(edited)).toBe(made);
  });
});

test('what stands above a piece that is kept is pointed at where it stands now', () => {
  const piece = 'piece "twice" { size 30 wide, 30 high, 12 deep }\n';
  const uri = URI.parse('file:///counted/twice.fettle');
  const relatedOf = (text: string) => {
    if (LangiumDocuments.hasDocument(uri)) LangiumDocuments.deleteDocument(uri);
    const document = LangiumDocumentFactory.fromString(text, uri);
    LangiumDocuments.addDocument(document);
    return evaluateDocument(services, document)
      .findings.filter(({ code }) => code === 'name-declared-twice')
      .flatMap(({ related }) => related.map(({ start, end }) => text.slice(start, end)));
  };
  const both = `${piece}${piece}`;
  expect(relatedOf(both)).toEqual(['piece "twice"']);
  expect(relatedOf(`// one line more\n${both}`)).toEqual(['piece "twice"']);
  expect(relatedOf(`${piece}\n// one line between\n${piece}`)).toEqual(['piece "twice"']);
});
