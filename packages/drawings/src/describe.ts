import type { Evaluation, FrontCell, LaidCell, LaidDivider, Length, Units } from '@fettle/engine';
import { cleanName } from './lettering.ts';
import { shown } from './shown-lengths.ts';

/** The elevation in words, for those who do not see it, in the order in which one would look at it. */

/** Descriptions of larger pieces end with a count of what was not told. */
const MOST_SENTENCES = 200;

const FRONT_WORDS: Readonly<Record<FrontCell['what'], string>> = {
  door: 'Door',
  drawer: 'Drawer',
  lid: 'Lid',
  'false-front': 'False front',
};

export function describeElevation(evaluation: Evaluation): string {
  const { design, layout } = evaluation;
  const { units } = design;
  const name = cleanName(design.name);
  const { width, height, depth } = design.size;
  const sizes = [
    ...(width === undefined ? [] : [`${shown(width.length, units)} wide`]),
    ...(height === undefined ? [] : [`${shown(height.length, units)} high`]),
    ...(depth === undefined ? [] : [`${shown(depth.length, units)} deep`]),
  ];
  const sentences: string[] = [`Front elevation of ${name === '' ? 'a piece without a name' : name}`];
  sentences.push(sizes.length === 0 ? 'No size is given yet' : `${joined(sizes)} over all`);
  if (layout.carcase === undefined) sentences.push('Nothing is drawn until width, height and depth are given');
  else if (layout.face === undefined) sentences.push('Only the case is drawn');
  else {
    const { x, y } = layout.carcase.face;
    sentences.push(`The face is ${size(x.size.length, y.size.length, units)}`);
    sentences.push(...cellSentences(layout.face, units));
  }
  const errors = evaluation.findings.filter((finding) => finding.severity === 'error').length;
  if (errors > 0) sentences.push(`${errors === 1 ? '1 error stands' : `${errors} errors stand`} against the piece`);
  return `${sentences.join('. ')}.`;
}

function cellSentences(root: LaidCell, units: Units): readonly string[] {
  const sentences: string[] = [];
  let untold = 0;
  const waiting: (LaidCell | LaidDivider)[] = [root];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const sentence = 'divider' in next ? dividerSentence(next, units) : cellSentence(next, units);
    if (sentence !== undefined && sentences.length < MOST_SENTENCES) sentences.push(sentence);
    else if (sentence !== undefined) untold += 1;
    if ('divider' in next) continue;
    const { cells, dividers } = next;
    waiting.unshift(
      ...cells.flatMap((cell, at) => {
        const divider = dividers[at];
        return divider === undefined || at === cells.length - 1 ? [cell] : [cell, divider];
      }),
    );
  }
  if (untold > 0) sentences.push(`${untold} more are not told here`);
  return sentences;
}

function cellSentence(laid: LaidCell, units: Units): string | undefined {
  const { cell } = laid;
  const name = cell.name === undefined ? '' : ` “${cleanName(cell.name)}”`;
  const { x, y } = laid.opening;
  const opening = size(x.size.length, y.size.length, units);
  switch (cell.kind) {
    case 'row':
      return `From left to right${name}, in ${opening}: ${cell.cells.length} openings`;
    case 'stack':
      return `From top to bottom${name}, in ${opening}: ${cell.cells.length} openings`;
    case 'open':
      return `Open space${name}, ${opening}${shelves(cell.shelves?.count)}`;
    case 'front': {
      const leaf = laid.leaves[0];
      const fronts =
        leaf === undefined
          ? 'front not known'
          : `${laid.leaves.length === 2 ? 'each ' : ''}${size(leaf.x.size.length, leaf.y.size.length, units)}`;
      const what = cell.what === 'door' && cell.leaves === 2 ? 'Pair of doors' : FRONT_WORDS[cell.what];
      return `${what}${name}, ${fronts}, opening ${opening}${shelves(cell.shelves?.count)}`;
    }
    default: {
      const unknown: never = cell;
      return unknown;
    }
  }
}

function dividerSentence({ divider }: LaidDivider, units: Units): string | undefined {
  if (divider.form === 'none') return undefined;
  const what = { partition: 'Partition', 'web-frame': 'Web frame', panel: 'Divider' }[divider.form];
  return `${what}, ${shown(divider.material.thickness.length, units)} thick${divider.mode === 'behind' ? ', behind the fronts' : ''}`;
}

function shelves(count: number | undefined): string {
  return count === undefined || count === 0 ? '' : `, ${count} ${count === 1 ? 'shelf' : 'shelves'}`;
}

function size(width: Length, height: Length, units: Units): string {
  return `${shown(width, units)} wide by ${shown(height, units)} high`;
}

function joined(items: readonly string[]): string {
  const last = items[items.length - 1] ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}
