import { type DesignedList, product } from "./Design.ts";

const mm = (size: number, tolerance?: number, decimals = 2) =>
  `${size.toFixed(decimals)} mm${tolerance === undefined ? "" : ` ± ${tolerance}`}`;

interface OutlinePoint {
  readonly along: string;
  readonly across: string;
}

/** The old big end, wider or narrower across; the height of its cap stays. */
function outlineOf(base: unknown, scale: number): readonly object[] {
  return (base as readonly OutlinePoint[]).map((point) => ({
    ...point,
    across: `${(Number.parseFloat(point.across) * scale).toFixed(1)} mm`,
  }));
}

/**
 * What could be offered for the demo build Larkspur Hill: sizes that go together and many that do not. Invented: the
 * spans of sizes are common practice for an engine of this size, prices and times are made up.
 */
export const designedLists: readonly DesignedList[] = [
  {
    part: "crankshaft",
    prefix: "CS",
    keep: ["originalStroke", "throws", "rodsPerPin"],
    offered: 210,
    designs: () =>
      product({
        stroke: [82, 84, 86, 88, 90, 92, 94, 96],
        pin: [45, 48, 50],
        weight: [70, 73, 76, 79],
        kind: ["forged-steel", "nitrided-steel", "billet-steel"],
      }).map(({ stroke, pin, weight, kind }) => {
        const mass = 14.5 + 0.2 * (stroke - 82) + 0.25 * (weight - 70) + 0.1 * (pin - 45);
        return {
          name: `Shaft of ${stroke} mm stroke on ${pin} mm pins, ${kind.replace("-", " ")}`,
          fields: {
            stroke: mm(stroke, 0.04),
            crankpinDiameter: mm(pin, 0.005, 3),
            counterweightRadius: mm(weight, 0.2, 1),
            material: kind,
            mass: `${mass.toFixed(1)} kg`,
            inertia: `${(mass * 0.00205).toFixed(4)} kg m2`,
          },
          price:
            { "forged-steel": 900, "nitrided-steel": 1250, "billet-steel": 2400 }[kind] + 12 * (stroke - 82),
          mass,
          wait: kind === "billet-steel" ? 70 : 21,
        };
      }),
  },
  {
    part: "connectingRod",
    prefix: "CR",
    keep: ["originalLength"],
    offered: 210,
    designs: (base) =>
      product({
        length: [138, 140, 142, 143, 144, 144.5, 146, 148, 150],
        bore: [48, 51, 53],
        pin: [20, 22],
        form: ["slim", "usual", "stout"],
        material: ["steel", "titanium"],
      }).map(({ length, bore, pin, form, material }) => {
        const scale = { slim: 0.88, usual: 0.96, stout: 1.02 }[form] * (bore / 51);
        const light = material === "titanium" ? 0.66 : 1;
        const [big, small] = [400 * light * scale, 165 * light * scale];
        return {
          name: `Rods of ${length} mm, ${form}, ${material}`,
          fields: {
            length: mm(length, 0.025),
            bigEndBore: mm(bore, 0.005, 3),
            bigEndOutline: outlineOf(base.bigEndOutline, scale),
            smallEndBore: mm(pin + 0.02, 0.003, 3),
            smallEndOuterDiameter: mm(pin + 11, undefined, 1),
            bushOuterDiameter: mm(pin + 3, undefined, 1),
            material,
            alloy: material === "titanium" ? "titanium-6al-4v" : "quenched-steel",
            bigEndMass: `${big.toFixed(0)} g`,
            smallEndMass: `${small.toFixed(0)} g`,
            capMass: `${(0.46 * big).toFixed(0)} g`,
            ratedSpeed: `${form === "slim" ? 8500 : 9500} rpm`,
            yieldStrength: `${material === "titanium" ? 880 : 1050} MPa`,
          },
          price:
            (material === "titanium" ? 2600 : 720) +
            { slim: 150, usual: 0, stout: 60 }[form] +
            3 * (length - 138),
          mass: (4 * (big + small)) / 1000,
          wait: material === "titanium" ? 90 : 28,
        };
      }),
  },
  {
    part: "rodBolt",
    prefix: "RB",
    keep: [],
    offered: 200,
    designs: () =>
      product({
        size: ["5/16", "3/8", "7/16"],
        yields: [1100, 1250, 1450, 1600],
        load: [0.8, 0.9, 1, 1.1],
        grip: [33, 35, 37, 39],
        finish: ["plain", "polished"],
      }).map(({ size, yields, load, grip, finish }) => {
        const diameter = { "5/16": 7.94, "3/8": 9.53, "7/16": 11.11 }[size];
        const area = 0.554 * diameter ** 2;
        return {
          name: `Rod bolts ${size} in, ${yields} MPa, grip ${grip} mm, ${finish}`,
          fields: {
            threadDiameter: `${size} in`,
            threadPitch: size === "7/16" ? "1/20 in" : "1/24 in",
            shankArea: `${area.toFixed(1)} mm2`,
            preload: `${((0.63 * yields * area * load) / 1000).toFixed(1)} kN ± 4 %`,
            yieldStrength: `${yields} MPa`,
            tensileStrength: `${yields + 150} MPa`,
            grip: `${grip} mm`,
          },
          price: 90 + (yields - 1100) * 0.35 + (finish === "polished" ? 45 : 0) + (diameter - 8) * 8,
          mass: (8 * 0.9 * diameter ** 2) / 1700,
          wait: 14,
        };
      }),
  },
  {
    part: "piston",
    prefix: "PI",
    keep: ["originalCompressionHeight"],
    offered: 230,
    designs: () =>
      product({
        height: [26, 27, 28, 28.4, 29, 30, 31, 32, 33, 34, 35],
        pin: [20, 22],
        dish: [6, 10, 13.8, 18],
        offset: [0.5, 0.8],
        alloy: ["2618", "4032"],
      }).map(({ height, pin, dish, offset, alloy }) => {
        const mass =
          250 + 3 * (height - 26) + 1.2 * pin + 2.7 * (18 - dish) * 0.4 + (alloy === "4032" ? -6 : 0);
        return {
          name: `Pistons of ${height} mm compression height, ${dish} cm3 dish, pin ${pin} mm`,
          fields: {
            compressionHeight: mm(height, 0.03),
            crownVolume: `${dish} cm3 dish ± 0.3`,
            pinBore: mm(pin + 0.018, 0.002, 3),
            pinOffset: `${offset} mm towards thrust side`,
            alloy,
            diameter: mm(alloy === "4032" ? 86.44 : 86.41, 0.005, 3),
            mass: `${mass.toFixed(0)} g`,
          },
          price: 640 + (alloy === "2618" ? 90 : 0) + 4 * Math.abs(height - 30) + 5 * (18 - dish),
          mass: (4 * mass) / 1000,
          wait: 35,
        };
      }),
  },
  {
    part: "pistonPin",
    prefix: "PP",
    keep: [],
    offered: 200,
    designs: () =>
      product({
        diameter: [20, 22],
        inner: [10, 11, 12, 13, 14],
        length: [52.4, 54.4, 55.4, 56.4, 56.8, 57.6, 58.6],
        coating: ["none", "diamond-like-carbon"],
        stress: [650, 750],
      }).map(({ diameter, inner, length, coating, stress }) => {
        const mass = (Math.PI / 4) * (diameter ** 2 - inner ** 2) * length * 7.85e-3;
        return {
          name: `Pins ${diameter} × ${length} mm, bore ${inner} mm${coating === "none" ? "" : ", coated"}`,
          fields: {
            outerDiameter: mm(diameter, 0.002, 3),
            innerDiameter: `${inner} mm`,
            length: `${length} mm`,
            mass: `${mass.toFixed(0)} g`,
            coating,
            allowableStress: `${stress} MPa`,
          },
          price: 110 + (coating === "none" ? 0 : 140) + (stress - 650) * 0.4,
          mass: (4 * mass) / 1000,
          wait: coating === "none" ? 10 : 42,
        };
      }),
  },
  {
    part: "ringSet",
    prefix: "RS",
    keep: [],
    offered: 200,
    designs: () =>
      product({
        top: [0.995, 1.195, 1.47],
        second: [0.995, 1.195, 1.47],
        thick: [2.9, 3.1, 3.5],
        gap: [0.36, 0.46, 0.58],
        oil: [1.99, 2.8],
        force: [10, 12],
      }).map(({ top, second, thick, gap, oil, force }) => ({
        name: `Rings ${top} / ${second} / ${oil} mm, gap ${gap} mm`,
        fields: {
          topRingHeight: mm(top, 0.005, 3),
          secondRingHeight: mm(second, 0.005, 3),
          topRingRadialThickness: `${thick} mm`,
          secondRingRadialThickness: `${(thick + 0.2).toFixed(1)} mm`,
          topRingEndGap: mm(gap, 0.02),
          secondRingEndGap: mm(gap + 0.04, 0.02),
          oilRingHeight: mm(oil),
          topRingTangentialForce: `${force} N`,
          mass: `${(15 + top + second + thick).toFixed(0)} g`,
        },
        price: 150 + (1.5 - top) * 90 + (1.5 - second) * 60 + (12 - force) * 8,
        mass: (4 * (15 + top + second + thick)) / 1000,
        wait: 12,
      })),
  },
  {
    part: "rodBearing",
    prefix: "SB",
    keep: ["clearanceMethod", "clearanceWindow"],
    offered: 200,
    designs: () =>
      product({
        wall: [1.462, 1.467, 1.472, 1.477, 1.482, 1.6, 1.722],
        length: [16.6, 17.6, 18.6],
        lining: ["copper-lead", "aluminium-tin"],
        crush: [0.04, 0.045, 0.05],
        edge: [1.5, 1.9],
      }).map(({ wall, length, lining, crush, edge }) => ({
        name: `Rod shells, wall ${wall} mm, ${length} mm long, ${lining}`,
        fields: {
          wall: mm(wall, 0.003, 3),
          length: `${length} mm`,
          lining,
          crush: mm(crush, 0.01, 3),
          edgeToCheek: `${edge} mm`,
        },
        price: lining === "copper-lead" ? 128 : 84,
        mass: 0.256,
        wait: 8,
      })),
  },
  {
    part: "mainBearing",
    prefix: "MB",
    keep: ["clearanceMethod", "clearanceWindow", "thrustLoad"],
    offered: 200,
    designs: () =>
      product({
        wall: [1.957, 1.962, 1.967, 1.972, 1.977, 2.092, 2.217],
        length: [18, 19, 20],
        lining: ["copper-lead", "aluminium-tin"],
        crush: [0.04, 0.045, 0.05],
        washer: [2.47, 2.52],
      }).map(({ wall, length, lining, crush, washer }) => ({
        name: `Main shells, wall ${wall} mm, ${length} mm long, ${lining}`,
        fields: {
          wall: mm(wall, 0.003, 3),
          length: `${length} mm`,
          lining,
          crush: mm(crush, 0.01, 3),
          thrustWasher: mm(washer, undefined, 3),
        },
        price: lining === "copper-lead" ? 165 : 98,
        mass: 0.62,
        wait: 8,
      })),
  },
  {
    part: "headGasket",
    prefix: "HG",
    keep: [],
    offered: 200,
    designs: () =>
      product({
        bore: [86, 87, 87.5, 88, 89],
        thickness: [0.7, 0.85, 1, 1.1, 1.2, 1.3, 1.5, 1.8],
        kind: ["layered-steel", "copper"],
        load: [200, 250, 300],
      }).map(({ bore, thickness, kind, load }) => ({
        name: `Gasket ${thickness} mm, bore ${bore} mm, ${kind}`,
        fields: {
          kind,
          bore: `${bore} mm`,
          compressedThickness: mm(thickness, 0.03),
          freeThickness: mm(thickness * 1.15),
          leastLineLoad: `${load} N/mm ± 25`,
        },
        price: (kind === "copper" ? 95 : 130) + thickness * 20 + (load - 200) * 0.2,
        mass: 0.45 * thickness,
        wait: 15,
      })),
  },
  {
    part: "camshaft",
    prefix: "CA",
    keep: ["sprocketRadius", "centreDistanceLoss", "bearingClearance", "endPlay"],
    offered: 200,
    designs: () =>
      product({
        duration: [252, 260, 268, 276, 284],
        lift: [9.8, 10.5, 11.25, 12],
        inlet: [106, 110, 114],
        exhaust: [108, 112, 116],
        base: [16.5, 17],
      }).map(({ duration, lift, inlet, exhaust, base }) => ({
        name: `Camshafts ${duration} deg, ${lift} mm, centres ${inlet}/${exhaust} deg`,
        fields: {
          inletClosing: `${(inlet + duration / 2 - 180).toFixed(0)} deg ± 1`,
          inletCentre: `${inlet} deg ± 1`,
          inletCentreCard: `${inlet} deg`,
          exhaustCentre: `${exhaust} deg ± 1`,
          inletDuration: `${duration} deg ± 2`,
          exhaustDuration: `${duration} deg ± 2`,
          inletUpperDuration: `${duration - 32} deg ± 2`,
          exhaustUpperDuration: `${duration - 32} deg ± 2`,
          inletLobeLift: mm(lift, 0.03),
          exhaustLobeLift: mm(lift - 0.25, 0.03),
          baseCircleRadius: `${base} mm`,
        },
        price: 540 + (duration - 252) * 2 + (lift - 9.8) * 30,
        mass: 5.6,
        wait: 45,
      })),
  },
];
