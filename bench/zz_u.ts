import { cookOf } from './measure/referenceCook.ts';
import { hiddenCook } from './measure/hiddenCook.ts';
import { knownOf } from '../src/core/learn/knowledge.ts';
import { learnFrom, fitted } from '../src/core/learn/learn.ts';
import { createReplay } from '../src/core/learn/replay.ts';
import { thinned } from '../src/core/learn/thinned.ts';
const cook = cookOf({});
for (let seed=1; seed<=3; seed++) {
  const h = hiddenCook(cook, seed);
  const replay = createReplay({prepared:cook.prepared, charge:cook.recipe.charge, events:thinned(h.told)});
  const fills = h.course.deeds.filter(d=>d.deed.kind==='water'&&d.deed.spoonfuls>0).map(d=>(d.deed as any).waterKg/(cook.prepared.kit.spoonM3*1000));
  const p = replay.predict(h.values, fills)!;
  const res = p.map((v,k)=>(replay.observed[k]-v));
  // residual by noise-free
  const clean = replay.observations.map((o,k)=> h.course.readingC[o.timeS]-p[k]);
  console.log(seed, 'rms', Math.sqrt(res.reduce((s,v)=>s+v*v,0)/res.length), 'clean max', Math.max(...clean.map(Math.abs)), 'clean rms', Math.sqrt(clean.reduce((s,v)=>s+v*v,0)/clean.length));
  console.log(clean.filter((_,i)=>i%8===0).map(v=>v.toFixed(3)).join(' '));
}
