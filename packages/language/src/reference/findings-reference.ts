import { catalogue, type Severity } from '@fettle/findings';

/** The reference of findings in Markdown, made from the catalogue: every code with its help page. */
export function findingsReference(): string {
  const entries = [...catalogue.values()].sort((a, b) => (a.code < b.code ? -1 : 1));
  const table = entries.map(({ code, severity, title }) => `| [\`${code}\`](#${code}) | ${severity} | ${title} |`);
  const pages = entries.map(
    ({ code, severity, title, help }) => `## ${code}\n\n**${title}** (${severity})\n\n${withLabels(help).trim()}`,
  );
  return `${[opening(entries.length), ['| Code | | |', '|---|---|---|', ...table].join('\n'), ...pages].join('\n\n')}\n`;
}

const weights: Readonly<Record<Severity, string>> = {
  error: 'it cannot be built as it is written',
  warning: 'it can be built, and will disappoint',
  note: 'worth knowing; nothing is wrong',
};

function opening(count: number): string {
  return [
    '# What is found',
    '',
    'Generated from the catalogue by `npm run reference`; do not edit.',
    '',
    `There are ${count} findings. Each is an **error** (${weights.error}), a **warning** (${weights.warning}) or a **note**`,
    `(${weights.note}); some weigh more or less from case to case. The examples are run by the tests: what is called wrong`,
    'gives the finding it stands under, what is called right does not.',
  ].join('\n');
}

function withLabels(help: string): string {
  return help.replace(/^```fettle (wrong|right)$/gm, (_, kind: string) =>
    kind === 'wrong' ? 'Wrong:\n\n```fettle' : 'Right:\n\n```fettle',
  );
}
