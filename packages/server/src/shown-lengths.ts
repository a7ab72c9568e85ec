import { type FettleServices, shownUnits } from '@fettle/language';
import type { LangiumSharedServices } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';

/**
 * Follows the maker's setting `fettle.show.lengths`. `changed` is told after each change, and editors are asked to ask
 * again for what they show beside the text.
 */
export function followShownLengths(
  connection: Connection,
  shared: LangiumSharedServices,
  { evaluation }: FettleServices,
  changed: () => void,
): void {
  const { ConfigurationProvider } = shared.workspace;
  let refreshes = false;
  let name: unknown = 'asWritten';
  shared.lsp.LanguageServer.onInitialize(({ capabilities }) => {
    refreshes = capabilities.workspace?.inlayHint?.refreshSupport === true;
  });
  const show = (settings: unknown): void => {
    const wanted = (settings as { lengths?: unknown } | null | undefined)?.lengths ?? 'asWritten';
    if (wanted === name) return;
    name = wanted;
    evaluation.DocumentEvaluator.showIn(shownUnits(wanted));
    changed();
    // An editor that cannot be reached needs no refreshing.
    if (refreshes) void connection.languages.inlayHint.refresh().catch(() => undefined);
  };
  ConfigurationProvider.onConfigurationSectionUpdate(({ section, configuration }) => {
    if (section === 'fettle') show((configuration as { show?: unknown } | null)?.show);
  });
  ConfigurationProvider.ready
    .then(() => ConfigurationProvider.getConfiguration('fettle', 'show'))
    .then(show, () => undefined);
}
