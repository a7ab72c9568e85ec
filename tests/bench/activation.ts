import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { type Quantiles, quantiles } from './quantiles.ts';

/**
 * The extension as it is shipped, in a process of its own each time, until it has been activated: its server is started
 * then, and not yet waited for. In place of the editor stands something that answers whatever is asked with more of
 * itself, so the editor's own share is not in the times.
 */
const standIn = `
  const Module = require('node:module');
  const kept = new Map();
  function anything(path) {
    if (kept.has(path)) return kept.get(path);
    const answer = () => anything(path + '()');
    const members = {
      get: (target, name) => {
        if (name === 'prototype') return target.prototype;
        if (name === Symbol.iterator) return function* () {};
        if (name === Symbol.toPrimitive) return () => '';
        if (name === 'then') return undefined;
        return anything(path + '.' + String(name));
      },
      set: () => true,
      apply: answer,
    };
    const made = new Proxy(function () {}, members);
    kept.set(path, made);
    return made;
  }
  // A bundle copies what a module owns and inherits the rest: so everything is inherited.
  const vscode = Object.create(anything('vscode'));
  const load = Module._load;
  Module._load = function (name, ...rest) {
    return name === 'vscode' ? vscode : load.call(this, name, ...rest);
  };
  const [extension] = process.argv.slice(1);
  const { dirname, resolve } = require('node:path');
  const root = dirname(dirname(extension));
  const began = performance.now();
  const { activate } = require(extension);
  const required = performance.now();
  const subscriptions = [];
  activate({ subscriptions, extensionUri: anything('uri'), asAbsolutePath: (path) => resolve(root, path) });
  const activated = performance.now();
  console.log(JSON.stringify({ loadMs: required - began, activateMs: activated - required, registered: subscriptions.length }));
  process.exit();
`;

export interface Activation {
  readonly load: Quantiles;
  readonly activate: Quantiles;
}

export function measureActivation(repository: string, runs: number): Activation {
  const times = Array.from({ length: runs }, () => {
    const printed = execFileSync(process.execPath, ['-e', standIn, join(repository, 'dist/extension.cjs')], {
      encoding: 'utf8',
    });
    const { loadMs, activateMs, registered } = JSON.parse(printed) as Record<string, number>;
    if (loadMs === undefined || activateMs === undefined || !registered) throw new Error('it was not activated');
    return { loadMs, activateMs };
  });
  return {
    load: quantiles(times.map(({ loadMs }) => loadMs)),
    activate: quantiles(times.map(({ activateMs }) => activateMs)),
  };
}
