import { priceNegative } from '@fettle/findings';
import type { Statement } from '../generated/ast.ts';
import { specOf } from '../names/declarations.ts';
import { expressionIn, readParts } from './phrases.ts';
import { originOf, type ReadContext, readNumber } from './reader.ts';

/** Whether what is bought costs something: in a shop file as beside a piece. */
export function priceFindings(context: ReadContext, statement: Statement): void {
  for (const read of readParts(statement, specOf(statement).spec).phrases) {
    if (!read.phrase.pattern.startsWith('costs <number>')) continue;
    const expression = expressionIn(read);
    if (expression === undefined) continue;
    // What is no number at all is told where numbers are read.
    const amount = readNumber({ ...context, findings: [] }, expression, 'number');
    if (amount === undefined || amount.sign() >= 0) continue;
    const at = originOf(context, expression);
    const words = expression.$cstNode?.text ?? '';
    const meant = words.replace(/^[-−]\s*/, '');
    context.findings.push(
      priceNegative.at(
        at,
        { what: statement.name ?? '', amount: words },
        {
          mends:
            meant === words
              ? []
              : [{ how: 'write', values: { amount: meant }, changes: [{ kind: 'set-words', at, words: meant }] }],
        },
      ),
    );
  }
}
