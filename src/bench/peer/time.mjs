// Prints the median time of each solid, warm, on one thread: node time.mjs FOLDER
import { cases, task } from './solids.mjs';

const WARM = 1500;
const TIMED = 2500;

for (const { name, solid } of cases(process.argv[2])) {
  const make = task(solid);
  const once = () => {
    const begin = performance.now();
    const result = make();
    result.getMesh();
    const took = performance.now() - begin;
    result.delete();
    return took;
  };
  for (let spent = 0; spent < WARM; ) {
    spent += once();
  }
  const times = [];
  for (let spent = 0; spent < TIMED || times.length < 5; ) {
    times.push(once());
    spent += times.at(-1);
  }
  times.sort((a, b) => a - b);
  const result = make();
  console.log(
    JSON.stringify({ name, milliseconds: times[times.length >> 1], triangles: result.numTri(), volume: result.volume() }),
  );
  result.delete();
}
