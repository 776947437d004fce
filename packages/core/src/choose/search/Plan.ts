import { orderKinds } from "./orderKinds.ts";
import type { ProjectedJudge } from "./ProjectedJudge.ts";
import type { Question } from "./Question.ts";

/** What is asked when so many kinds are chosen. */
export interface Stage {
  /** Of each kind that is still to be chosen, what tells some of its parts apart already now. By kind. */
  readonly ahead: readonly (readonly Question[])[];
  /** What is asked of the choice itself, since it takes too long to be asked ahead. */
  readonly own: readonly Question[];
  /** Rules that are settled from here on and were not before. */
  readonly settled: readonly Question[];
}

/** In which order kinds are chosen, and which rules are asked when. */
export interface Plan {
  /** Indices of the kinds. */
  readonly order: readonly number[];
  /** By the number of kinds that are chosen, from none to all. */
  readonly stages: readonly Stage[];
}

/** Whether the margin of a rule counts: it is settled, and the choice has a say in it. */
export const countsForMargin = ({ whole, kinds, isAim }: Question) => whole && kinds.length > 0 && !isAim;

const cheapFirst = (a: Question, b: Question) =>
  Number(a.dear) - Number(b.dear) || a.facts.size - b.facts.size || a.index - b.index;

/**
 * Plans a search: every rule is asked as soon as the parts chosen so far, and one more, may make it fail. What takes
 * long is asked only of choices that nothing else rules out.
 */
export function planSearch(judge: ProjectedJudge, sizes: readonly number[]): Plan {
  const indices = [...judge.rules.keys()];
  const order = orderKinds(
    indices.map((index) => judge.kindsOf(index)),
    sizes,
  );
  const askedWith = (kinds: readonly number[]) =>
    indices.map((index) => judge.question(index, (kind) => kinds.includes(kind)));
  const stages: Stage[] = [];
  let before: readonly (Question | undefined)[] = indices.map(() => undefined);
  let aheadBefore: readonly (readonly (Question | undefined)[])[] = sizes.map(() => before);
  for (let count = 0; count <= order.length; count += 1) {
    const chosen = order.slice(0, count);
    const now = askedWith(chosen);
    const fresh = now.filter(
      (question, index) => question !== undefined && question !== before[index],
    ) as Question[];
    const ahead = sizes.map((_, kind) => (chosen.includes(kind) ? [] : askedWith([...chosen, kind])));
    stages.push({
      // What is cheap was asked ahead, when this kind was the next to be chosen.
      own: fresh.filter(({ dear }) => dear || count === 0).sort(cheapFirst),
      settled: fresh.filter(countsForMargin),
      ahead: ahead.map((questions, kind) =>
        (
          questions.filter(
            (question, index) =>
              question !== undefined && question !== now[index] && question !== aheadBefore[kind]![index],
          ) as Question[]
        )
          .filter(({ dear }) => !dear)
          .sort(cheapFirst),
      ),
    });
    before = now;
    aheadBefore = ahead;
  }
  return { order, stages };
}
