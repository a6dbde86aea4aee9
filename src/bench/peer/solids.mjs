// Reads the expressions that dryfit.bench.Dump writes and makes Manifold tasks of them.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Module from 'manifold-3d';

const wasm = await Module();
wasm.setup();
const { Manifold, Mesh } = wasm;

export function cases(folder) {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => ({ name: name.slice(0, -5), ...JSON.parse(readFileSync(join(folder, name), 'utf8')) }));
}

/** A leaf; Manifold reads 32-bit floats. */
function leaf({ points, triangles }) {
  const mesh = new Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(points.flat()),
    triVerts: Uint32Array.from(triangles),
  });
  return Manifold.ofMesh(mesh);
}

/** Makes all leaves now and returns a function that does the rest and hands over the result, to be deleted. */
export function task(solid) {
  const [[kind, of]] = Object.entries(solid);
  if (kind === 'polyhedron') {
    const ready = leaf(of);
    return () => ready.translate(0, 0, 0);
  }
  const operands = of.map(task);
  return () => {
    const ready = operands.map((each) => each());
    const result =
      kind === 'union' ? Manifold.union(ready)
      : kind === 'common' ? Manifold.intersection(ready)
      : Manifold.difference(ready);
    ready.forEach((each) => each.delete());
    return result;
  };
}

/**
 * How far the volume may be off: three 32-bit float steps all over the surfaces of the leaves, in mm^3. One is
 * for reading floats, two for surfaces that Manifold takes for one because floats can hardly tell them apart.
 */
export function slack(solid) {
  const [[kind, of]] = Object.entries(solid);
  if (kind !== 'polyhedron') {
    return of.reduce((sum, each) => sum + slack(each), 0);
  }
  let reach = 0;
  for (const v of of.points.flat()) {
    reach = Math.max(reach, Math.abs(v));
  }
  const ready = leaf(of);
  const area = ready.surfaceArea();
  ready.delete();
  return 3 * area * Math.sqrt(3) * reach * 2 ** -23 + 1e-6;
}
