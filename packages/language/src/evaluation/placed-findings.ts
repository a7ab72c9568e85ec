import { exactSource, Length, type Units } from '@fettle/engine';
import { type Change, catalogue, type Finding, type Origin, type Say, type Severity } from '@fettle/findings';
import type { Place } from '../reading/text-units.ts';

/** A finding as an editor or a command line shows it: a sentence, a place, and edits of the text. */
export interface PlacedFinding extends Place {
  readonly code: string;
  readonly severity: Severity;
  readonly sentence: string;
  /** In a few words, where the catalogue has some; otherwise what the sentence comes to. */
  readonly brief: string;
  readonly related: readonly (Place & { readonly sentence: string })[];
  readonly fixes: readonly PlacedFix[];
  readonly finding: Finding;
  /** The words of the pattern it is about, where it stands on a piece made from one. */
  readonly pattern?: Place;
  /** The same note at the other pieces made from its pattern, where it is said once for all of them. */
  readonly others?: readonly PlacedFinding[];
}

export interface PlacedFix {
  readonly title: string;
  /** The best of several. */
  readonly preferred: boolean;
  /** It cannot change what was meant. */
  readonly safe: boolean;
  readonly edits: readonly TextChange[];
}

export interface TextChange extends Place {
  readonly text: string;
}

/** Undefined only when the finding's own words are gone from the text. */
export function placeFinding(
  finding: Finding,
  units: Units,
  say: Say,
  place: (origin: Origin) => Place | undefined,
  textAt: (at: Place) => string,
): PlacedFinding | undefined {
  const at = place(finding.origin);
  const entry = catalogue.get(finding.code);
  if (at === undefined || entry === undefined) return undefined;
  const related = finding.related.flatMap(({ role, values, origin }) => {
    const where = place(origin);
    const sentence = entry.related[role]?.(values, say);
    return where === undefined || sentence === undefined ? [] : [{ ...where, sentence }];
  });
  const fixes = finding.mends.flatMap((mend, index): PlacedFix[] => {
    const title = entry.mends[mend.how]?.(mend.values, say);
    const edits = mend.changes.map((change) => toTextChange(change, units, place, textAt));
    if (title === undefined || edits.some((edit) => edit === undefined)) return [];
    return [{ title, preferred: index === 0, safe: mend.safe === true, edits: edits as TextChange[] }];
  });
  const sentence = entry.headline(finding.facts, say);
  // Written out: spreading a place into so large an object costs more than all the rest.
  return {
    uri: at.uri,
    start: at.start,
    end: at.end,
    code: finding.code,
    severity: finding.severity,
    sentence,
    brief: entry.brief?.(finding.facts, say) ?? gistOf(sentence),
    related,
    fixes,
    finding,
  };
}

/** A sentence says what is wrong, then by how much; its last part has the number. */
function gistOf(sentence: string): string {
  return sentence.slice(sentence.lastIndexOf(': ') + 1).trim() || sentence;
}

/** A proposed change as an edit. Lengths go in exactly, never as they are shown. */
function toTextChange(
  change: Change,
  units: Units,
  place: (origin: Origin) => Place | undefined,
  textAt: (at: Place) => string,
): TextChange | undefined {
  switch (change.kind) {
    case 'set-length': {
      const at = place(change.at);
      const length = Length.fromMeasure(change.to);
      return at === undefined || length === undefined ? undefined : { ...at, text: exactSource(length, units.unit) };
    }
    case 'set-words': {
      const at = place(change.at);
      return at && { ...at, text: change.words };
    }
    case 'set-name': {
      const at = place(change.at);
      return at && { ...at, text: `"${change.name}"` };
    }
    case 'insert-words': {
      const at = place(change.after);
      if (at === undefined) return undefined;
      const space = /^[A-Za-z]/.test(change.words) && !/\s$/.test(textAt(at)) ? ' ' : '';
      return { ...at, start: at.end, text: `${space}${change.words}` };
    }
    case 'remove': {
      const at = place(change.at);
      return at && { ...withSpaceAround(at, textAt), text: '' };
    }
    default: {
      const unknown: never = change;
      return unknown;
    }
  }
}

/** What goes out goes with the comma or the space before it, and with its line when nothing else stands there. */
function withSpaceAround(at: Place, textAt: (at: Place) => string): Place {
  const reach = textAt({ ...at, start: Math.max(0, at.start - longestLine), end: at.start });
  // No more than its line: what is looked for at the end is looked for from every place.
  const before = reach.slice(Math.max(0, reach.lastIndexOf('\n')));
  const after = textAt({ ...at, start: at.end, end: at.end + longestLine });
  const restOfLine = /^[ \t]*(?:\r?\n|$)/.exec(after)?.[0];
  const indent = /(?:^|\n)([ \t]*)$/.exec(before)?.[1];
  if (indent !== undefined && restOfLine !== undefined) {
    return { ...at, start: at.start - indent.length, end: at.end + restOfLine.length };
  }
  if (indent !== undefined) return { ...at, end: at.end + (/^,?[ \t]*/.exec(after)?.[0].length ?? 0) };
  const isWords = /^[A-Za-z0-9"“”]/.test(textAt(at));
  const gap = (isWords ? /[ \t]*,[ \t]*$/ : /[ \t]+$/).exec(before) ?? /[ \t]+$/.exec(before);
  return { ...at, start: at.start - (gap?.[0].length ?? 0) };
}

const longestLine = 2000;
