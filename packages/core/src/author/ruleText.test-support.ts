/** A rule file without any problem, of which tests change one thing. */
export const ruleText = `# A rule for tests.
id: rule-for-tests
title: The ring lands leave room for tests
system: rings
parts: [ring-set, piston, fuel]
stages: [choose, machine]
when:
  all:
    - { fact: use, operator: in, value: [street, circuit] }
    - { fact: block.cylinders, operator: greaterThan, value: "2" }
requires:
  all:
    - { fact: topRingBackClearance, operator: greaterThanInclusive, value: { fact: limit.least } }
    - { fact: block.bore, operator: lessThan, value: 120 mm }
limits:
  least:
    value: 0.20 mm
    range: [0.10 mm, 0.50 mm]
    standing: common-practice
    movedBy: [use]
    cases:
      - { when: { fact: use, operator: equal, value: street }, value: 0.30 mm }
otherwise:
  work: order
  weight: note
  do: The room is {topRingBackClearance}; {limit.least} is wanted.
because: Only for tests of the checks of rule files.
sources:
  - { id: common-practice }
examples:
  - name: inside
    given: { use: circuit, block.cylinders: "4", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: holds
  - name: on it
    given: { use: circuit, block.cylinders: "4", topRingBackClearance: 0.20 mm, block.bore: 119.9 mm ± 0 }
    verdict: holds
  - name: outside
    given: { use: circuit, block.cylinders: "4", topRingBackClearance: 0.19 mm, block.bore: 90 mm ± 0 }
    verdict: fails
  - name: on, street
    given: { use: street, block.cylinders: "3", topRingBackClearance: 0.30 mm, block.bore: 90 mm ± 0 }
    verdict: holds
  - name: outside, street
    given: { use: street, block.cylinders: "4", topRingBackClearance: 0.29 mm, block.bore: 90 mm ± 0 }
    verdict: fails
  - name: bore on its limit
    given: { use: circuit, block.cylinders: "3", topRingBackClearance: 0.21 mm, block.bore: 120 mm ± 0 }
    verdict: fails
  - name: two cylinders
    given: { use: circuit, block.cylinders: "2", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: not-applicable
  - name: another use
    given: { use: drag, block.cylinders: "4", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: not-applicable
  - name: not known yet
    given: { use: circuit, block.cylinders: "4", block.bore: 90 mm ± 0 }
    verdict: unknown
  - name: another use, endurance
    given: { use: endurance, block.cylinders: "4", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: not-applicable
  - name: another use, marine
    given: { use: marine, block.cylinders: "4", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: not-applicable
  - name: another use, vintage
    given: { use: vintage, block.cylinders: "4", topRingBackClearance: 0.21 mm, block.bore: 90 mm ± 0 }
    verdict: not-applicable
`;

/** Where that file stands. */
export const rulePath = "rules/rings/rule-for-tests.yaml";
