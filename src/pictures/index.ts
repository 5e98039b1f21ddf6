export { bondStrength } from './bond.ts';
export { costPerYear } from './costs.ts';
export { draw } from './draw.ts';
export { forceOverDisplacement, forceOverTime } from './force.ts';
export { groupComparison } from './groups.ts';
export { marked } from './mark.ts';
export { forceData } from './recorded.ts';
export { rankedRisks } from './risks.ts';
