import type { LineRole } from './line-types.ts';
import { type Line, type Primitive, walk } from './primitives.ts';

/** Which kinds of line are really to be seen on a sheet, so that its notes explain these and no others. */

/** A line under the face of a front that is drawn later is covered. */
export function visibleRoles(content: readonly Primitive[]): ReadonlySet<LineRole> {
  const roles = new Set<LineRole>();
  let hidden: Line[] = [];
  for (const drawn of walk(content)) {
    if (drawn.kind === 'rectangle' && drawn.surface === 'front') {
      const { left, right, top, bottom } = drawn.box;
      hidden = hidden.filter(({ from, to }) => {
        const x = (from.x + to.x) / 2;
        const y = (from.y + to.y) / 2;
        return x < left || right < x || y < top || bottom < y;
      });
    } else if (drawn.kind === 'line' && drawn.role === 'hidden') hidden.push(drawn);
    else if (drawn.kind === 'line' || drawn.kind === 'arrow') roles.add(drawn.role);
  }
  if (hidden.length > 0) roles.add('hidden');
  return roles;
}
