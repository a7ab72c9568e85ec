import { isAbsolute, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogue } from '@fettle/findings';
import manifest from '../package.json' with { type: 'json' };
import type { CheckJson, FindingJson, MendJson, PlaceJson } from './finding-json.ts';

/**
 * Findings in the Static Analysis Results Interchange Format, version 2.1.0 (OASIS Standard), for services that gather
 * the results of many programs. Section numbers are those of that standard. Knows only what leaves the program anyway.
 */

/** Printed by `fettle check --format sarif`. */
export function sarifLog(report: CheckJson) {
  const rules = rulesOf(report.findings);
  const places = new Map(rules.map(({ id }, index) => [id, index]));
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'Fettle', semanticVersion: manifest.version, rules } },
        // 3.14.17: columns as editors and this program count them.
        columnKind: 'utf16CodeUnits',
        invocations: [invocation(report)],
        artifacts: report.files.map((file) => ({ location: { uri: uriOf(file) }, sourceLanguage: 'fettle' })),
        results: report.findings.map((finding) => result(finding, places.get(finding.code) ?? 0)),
      },
    ],
  };
}

/** 3.49: one for each code that occurs, with its heading and its help page. */
function rulesOf(findings: readonly FindingJson[]) {
  return [...new Set(findings.map(({ code }) => code))].sort().map((code) => {
    const entry = catalogue.get(code);
    const title = entry?.title ?? code;
    return {
      id: code,
      shortDescription: { text: messageText(title) },
      ...(entry === undefined
        ? {}
        : {
            help: { text: messageText(entry.help.trim()), markdown: messageText(entry.help.trim()) },
            defaultConfiguration: { level: entry.severity },
          }),
    };
  });
}

/** 3.20: what could not be read is told where a reader of the log looks for it; the findings then are not all. */
function invocation({ refused }: CheckJson) {
  return {
    executionSuccessful: refused.length === 0,
    ...(refused.length === 0
      ? {}
      : {
          toolExecutionNotifications: refused.map(({ file, why }) => ({
            level: 'error',
            message: { text: messageText(`${file} ${why}`) },
          })),
        }),
  };
}

function result(finding: FindingJson, ruleIndex: number) {
  const { code, severity, sentence, related, mends } = finding;
  return {
    ruleId: code,
    ruleIndex,
    // 3.27.10: the standard's own words are the same as ours.
    level: severity,
    message: { text: messageText(sentence) },
    locations: [{ physicalLocation: physicalLocation(finding) }],
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map((each, index) => ({
            id: index + 1,
            message: { text: messageText(each.sentence) },
            physicalLocation: physicalLocation(each),
          })),
        }),
    ...(mends.length === 0 ? {} : { fixes: mends.map(fix) }),
  };
}

/** 3.55 to 3.57: the edits of one mend, gathered by file. */
function fix({ title, edits }: MendJson) {
  const files = [...new Set(edits.map(({ file }) => file))];
  return {
    description: { text: messageText(title) },
    artifactChanges: files.map((file) => ({
      artifactLocation: { uri: uriOf(file) },
      replacements: edits
        .filter((edit) => edit.file === file)
        .map((edit) => ({ deletedRegion: region(edit), insertedContent: { text: edit.text } })),
    })),
  };
}

function physicalLocation(place: PlaceJson) {
  return { artifactLocation: { uri: uriOf(place.file) }, region: region(place) };
}

/** 3.30: lines and columns count from 1, the end column stands behind the last character, offsets count from 0. */
function region({ start, end }: PlaceJson) {
  return {
    startLine: start.line,
    startColumn: start.column,
    endLine: end.line,
    endColumn: end.column,
    charOffset: start.offset,
    charLength: end.offset - start.offset,
  };
}

/** 3.10: a URI reference. What lies outside the folder where the command ran has no relative one that would be stable. */
function uriOf(file: string): string {
  // Elsewhere than on Windows a backslash is a character like any other.
  const segments = file.split(sep === '/' ? '/' : /[/\\]/).filter((segment) => segment !== '.' && segment !== '');
  if (isAbsolute(file) || segments.includes('..')) return pathToFileURL(resolve(file)).href;
  return segments.map(encodeURIComponent).join('/');
}

/** 3.11.5 and 3.11.6: braces stand for placeholders and `[..](..)` for a link; no name may be taken for either. */
function messageText(words: string): string {
  return words.replaceAll(/[{}]/g, '$&$&').replaceAll(/\[(?=[^\]]*\]\()/g, '\\[');
}
