import type { Finding } from '@fettle/findings';
import { lidFindings } from '../hanging/lid-findings.ts';
import type { TradeCase } from '../trade/case-facts.ts';
import { baseFindings } from './base-checks.ts';
import { caseFindings } from './case-checks.ts';
import { frameFindings } from './frame-checks.ts';
import { hungFindings } from './hung-checks.ts';

/** How a case is built up: what cannot be made so, and what will not last so. */
export function constructionFindings(one: TradeCase): readonly Finding[] {
  return [...frameFindings(one), ...caseFindings(one), ...baseFindings(one), ...hungFindings(one), ...lidFindings(one)];
}
