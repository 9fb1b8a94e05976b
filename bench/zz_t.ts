import { cookOf } from './measure/referenceCook.ts';
import { hiddenCook } from './measure/hiddenCook.ts';
import { knownOf, valuesAt } from '../src/core/learn/knowledge.ts';
import { learnFrom } from '../src/core/learn/learn.ts';
import { kitParameters } from '../src/core/pan/kitParameters.ts';
import { valueAt } from '../src/core/reactions/parameter.ts';
const cook = cookOf({});
const inside: Record<string, number[]> = {};
const from=Number(process.argv[2]??1), to=Number(process.argv[3]??4);
for (let seed=from; seed<=to; seed++) {
  const h = hiddenCook(cook, seed);
  const t0=performance.now();
  const out = learnFrom({prepared:cook.prepared, charge:cook.recipe.charge, events:h.told}, 'c');
  console.log(seed, out.kind, JSON.stringify(out.verdict), ((performance.now()-t0)/1000).toFixed(1),'s');
  if (out.kind!=='learned') continue;
  const k = knownOf({...cook.prepared.kit, learned: out.learned});
  out.learned.names.forEach((n,i)=>{ const sd=1.25*Math.sqrt(out.learned.covariance[i][i]); const lo=valueAt(k.stated[n],out.learned.centre[i]-1.2816*sd), hi=valueAt(k.stated[n],out.learned.centre[i]+1.2816*sd); (inside[n]??=[]).push(h.values[n]>=lo&&h.values[n]<=hi?1:0); (inside[n+' sd']??=[]).push(sd/1.25);});
}
const mean=(a:number[])=>a.reduce((x,y)=>x+y,0)/a.length;
const kit=Object.keys(kitParameters(cook.prepared.kit));
for (const n of [...kit,...Object.keys(inside).filter(n=>!n.endsWith(' sd')&&!kit.includes(n))]) console.log(n.padEnd(22), mean(inside[n]).toFixed(2), mean(inside[n+' sd']).toFixed(2));
console.log('all', mean(Object.entries(inside).filter(([n])=>!n.endsWith(' sd')).flatMap(([,v])=>v)));
console.log('kit', mean(kit.flatMap(n=>inside[n])));
