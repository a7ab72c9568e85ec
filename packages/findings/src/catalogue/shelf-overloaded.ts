import { defineFinding } from '../finding.ts';
import { subject } from '../named.ts';

/** What stands on one shelf is heavier than what shelves are screened for. */
export const shelfOverloaded = defineFinding<{
  readonly name?: string;
  readonly words: string;
  /** What stands on the shelf that carries most: '48 lb'. */
  readonly load: string;
  /** The same on a square foot or a square metre: '61 lb a square foot'. */
  readonly spread: string;
  readonly limit: string;
  readonly difference: string;
}>({
  code: 'shelf-overloaded',
  severity: 'warning',
  title: 'More weight than shelves are screened for',
  headline: (facts, say) =>
    `a shelf of ${subject(facts, say)} carries ${facts.load} of what it holds, ${facts.spread}: ${facts.difference} ` +
    `more than the ${facts.limit} that shelves are screened for; a screening, no rating`,
  brief: (facts) => `${facts.difference} too much on a shelf`,
  related: { opening: (values, say) => `${subject(values, say)} has these shelves` },
  mends: {},
  help: `
How long a shelf may be is screened at 50 lb a square foot (244 kg a square metre), the load of the shelf table of the
Architectural Woodwork Standards (2009, 10-1.2.21) for books. What an opening \`holds\` is stood on its bottom first, then
on one shelf after the other from below, and what that makes on the shelf that carries most is compared with it. It is no
rating of a shelf. Spread the weight over more shelves, or stand it on the floor.

\`\`\`fettle wrong
piece "rack" {
  size 21-1/2 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "stock" { shelves 2 fixed   holds 18 "paint" } }
  thing "paint" { 6 wide, 6 deep, 8 high   this way up   weighs 20 lb }
}
\`\`\`

\`\`\`fettle right
piece "rack" {
  size 21-1/2 wide, 30 high, 12 deep
  case { sides thick 3/4   bottom thick 3/4, between sides }
  face inset { open "stock" { shelves 2 fixed   holds 6 "paint" } }
  thing "paint" { 6 wide, 6 deep, 8 high   this way up   weighs 20 lb }
}
\`\`\`
`,
});
