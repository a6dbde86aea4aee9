// One table from what JMH and the peer measured: node table.mjs jmh.json [more.json ...] peer.jsonl
import { readFileSync } from 'node:fs';

const rows = new Map();
const row = (name) => rows.get(name) ?? rows.set(name, {}).get(name);
const median = (entry) => entry.primaryMetric.scorePercentiles['50.0'];

const [measured, peer] = [process.argv.slice(2, -1), process.argv.at(-1)];
for (const entry of measured.flatMap((file) => JSON.parse(readFileSync(file, 'utf8')))) {
  const what = entry.benchmark.split('.').at(-1);
  const { solid, engine, spindles } = entry.params;
  const name = solid ?? (spindles ? `${what} ${spindles} spindles` : `chair: ${what}`);
  row(name)[engine ?? 'exact'] = median(entry);
}
for (const line of readFileSync(peer, 'utf8').trim().split('\n')) {
  const { name, milliseconds } = JSON.parse(line);
  // A run that left our own solids out has nothing to compare with.
  if (rows.has(name)) row(name)['manifold-3d'] = milliseconds;
}

const peers = ['jcsg', 'commons', 'manifold-3d'];
const cell = (text, width) => String(text ?? '-').padStart(width);
const digits = (v) => (v === undefined ? '-' : v < 10 ? v.toFixed(2) : v.toFixed(1));
console.log('Medians in ms; "x ours" is how many times as long as the exact kernel the peer takes in the same run.');
console.log(`${'what'.padEnd(24)}${cell('exact', 9)}${peers.map((p) => cell(p, 12) + cell('x ours', 8)).join('')}`);
for (const [name, times] of rows) {
  const cells = peers.map((p) => cell(digits(times[p]), 12) + cell(times[p] && times.exact && digits(times[p] / times.exact), 8));
  console.log(`${name.padEnd(24)}${cell(digits(times.exact), 9)}${cells.join('')}`);
}
