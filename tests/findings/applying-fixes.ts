import { evaluateDocument, type PlacedFinding, type PlacedFix } from '@fettle/language';
import { expect } from 'vitest';
import type { Fixture, FixtureFile } from '../language/harness/fixture.ts';
import { fileName, openFixture } from '../language/harness/workbench.ts';

/** Opens a fixture and takes its findings as an editor would, fixes included. */

export async function findingsIn(fixture: Pick<Fixture, 'files'>): Promise<readonly PlacedFinding[]> {
  const workbench = await openFixture(fixture);
  return workbench.documents.flatMap((document) => evaluateDocument(workbench.services, document).findings);
}

/** The files as they stand when the fix has been taken. Edits of one fix never overlap. */
export function filesWithFix(files: readonly FixtureFile[], fix: PlacedFix): FixtureFile[] {
  return files.map(({ name, text }) => {
    const edits = fix.edits.filter((edit) => fileName(edit.uri) === name).sort((a, b) => b.start - a.start);
    let changed = text;
    let before = text.length;
    for (const edit of edits) {
      expect(edit.end, fix.title).toBeLessThanOrEqual(before);
      changed = changed.slice(0, edit.start) + edit.text + changed.slice(edit.end);
      before = edit.start;
    }
    return { name, text: changed };
  });
}

/**
 * Taking any fix of these findings clears its finding, and adds no error and no warning. Notes may come: a piece that can
 * be worked out again is told what is worth knowing about it. Returns which ways out were taken.
 */
export async function checkFixes(fixture: Pick<Fixture, 'files'>, code: string): Promise<string[]> {
  const before = await findingsIn(fixture);
  const taken: string[] = [];
  for (const finding of before.filter((each) => each.code === code)) {
    expect(finding.fixes.length, 'every way out has become an edit').toBe(finding.finding.mends.length);
    for (const [index, fix] of finding.fixes.entries()) {
      const files = filesWithFix(fixture.files, fix);
      const after = await findingsIn({ files });
      const left = before.map(written);
      left.splice(left.indexOf(written(finding)), 1);
      const added = after.filter((each) => each.severity !== 'note' && !left.includes(written(each)));
      const what = `${finding.sentence}\n→ ${fix.title}\n${files[0]?.text ?? ''}`;
      expect(added.map(written), what).toEqual([]);
      expect(after.filter((each) => each.code === finding.code).length, what).toBeLessThan(
        before.filter((each) => each.code === finding.code).length,
      );
      taken.push(finding.finding.mends[index]?.how ?? '');
    }
  }
  return taken;
}

/** What a finding says, apart from where: a fix may move what stands behind it. */
function written({ code, severity, sentence }: PlacedFinding): string {
  return `${severity} ${code}: ${sentence}`;
}
