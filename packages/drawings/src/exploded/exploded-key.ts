import { groupedBy, type Part } from '@fettle/engine';
import { cleanName } from '../lettering.ts';

/** What the marks stand for: 'A  top', 'L1 to L8  drawer sides'. In the order of the marks. */
export function explodedKey(parts: readonly Part[]): readonly string[] {
  const inOrder = [...parts].sort((a, b) => a.mark.localeCompare(b.mark, 'en', { numeric: true }));
  const groups = groupedBy(inOrder, ({ mark }) => /^\D*/.exec(mark)?.[0] ?? mark);
  return [...groups.values()].sort(byMark).map((group) => {
    const [first] = group;
    const last = group[group.length - 1];
    if (first === undefined || last === undefined || first === last) {
      return `${cleanName(first?.mark ?? '')}  ${cleanName(first?.label ?? '')}`;
    }
    const joint = group.length === 2 ? ', ' : ' to ';
    return `${cleanName(first.mark)}${joint}${cleanName(last.mark)}  ${wordsFor(group)}`;
  });
}

/** 'A' to 'Z' before 'AA'. */
function byMark([a]: readonly Part[], b: readonly Part[]): number {
  const [one, other] = [a?.mark ?? '', b[0]?.mark ?? ''].map((mark) => /^\D*/.exec(mark)?.[0] ?? '');
  if (one === undefined || other === undefined) return 0;
  return one.length - other.length || (one < other ? -1 : one > other ? 1 : 0);
}

function wordsFor(group: readonly Part[]): string {
  const roles = [...new Set(group.map(({ role }) => role.replace('-', ' ')))];
  return roles.map(plural).join(', ');
}

function plural(words: string): string {
  if (words === 'shelf') return 'shelves';
  if (words === 'foot') return 'feet';
  return words.endsWith('s') ? words : `${words}s`;
}
