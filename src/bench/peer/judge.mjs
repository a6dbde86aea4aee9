// Compares the volume of each solid with ours and fails if one is further off than floats allow: node judge.mjs FOLDER
import { cases, slack, task } from './solids.mjs';

let wrong = 0;
let asked = 0;
for (const { name, solid, volume } of cases(process.argv[2])) {
  const result = task(solid)();
  const theirs = result.volume();
  const status = result.status();
  const allowed = slack(solid);
  asked++;
  if (status !== 'NoError' || Math.abs(theirs - volume) > allowed) {
    wrong++;
    console.log(`${name}: ours ${volume}, theirs ${theirs} (${status}), allowed ${allowed.toPrecision(3)}`);
  }
  result.delete();
}
console.log(`${asked} solids compared, ${wrong} differ`);
process.exit(wrong > 0 ? 1 : 0);
