// @ts-check
/**
 * The licences of what is bundled into the product: their terms ask that the notice travels along. Made from what the
 * bundler says it really took in, so nothing is listed that is not shipped and nothing shipped is left out.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from './running.mjs';

/** @param {readonly string[]} inputs paths of bundled files @returns {string[]} folders of packages, sorted */
function packageFolders(inputs) {
  const folders = inputs.flatMap((input) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(input)?.[0] ?? []);
  return [...new Set(folders)].sort();
}

/**
 * @param {readonly string[]} inputs paths of bundled files, relative to the repository
 * @returns {string} the text of the notices
 * @throws {Error} when a bundled package comes without a licence text
 */
export function thirdPartyNotices(inputs) {
  const notices = packageFolders(inputs).map((folder) => {
    const manifest = JSON.parse(readFileSync(join(repository, folder, 'package.json'), 'utf8'));
    const file = licenceFile(folder);
    if (file === undefined) throw new Error(`${folder} is bundled and has no licence text to ship`);
    const text = readFileSync(join(repository, folder, file), 'utf8')
      .replaceAll('\r\n', '\n')
      .trim();
    return `${manifest.name} ${manifest.version} (${manifest.license})\n\n${text}\n`;
  });
  return `Fettle contains the following packages.\n\n${notices.join(`\n${'-'.repeat(80)}\n\n`)}`;
}

/** @param {string} folder */
function licenceFile(folder) {
  const absolute = join(repository, folder);
  return existsSync(absolute) ? readdirSync(absolute).find((name) => /^licen[cs]e(\.|$)/i.test(name)) : undefined;
}
