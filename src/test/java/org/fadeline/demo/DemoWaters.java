package org.fadeline.demo;

/** The three invented waters and what the angler decides on them. */
public final class DemoWaters {
  private DemoWaters() {}

  /** A hot August carp water; about 40 fish and 69 kg with {@link #planA}. */
  public static DemoWater waterA() {
    return WaterA.water();
  }

  /** Water A two weeks later. */
  public static DemoWater waterASecondDay() {
    return WaterA.water().on(WaterA.secondDay());
  }

  /** The usual plan on water A. */
  public static DemoPlan planA() {
    return WaterA.firstPlan();
  }

  /** Other decisions on water A. */
  public static DemoPlan planASecondDay() {
    return WaterA.secondPlan();
  }

  /** A cool May water of mixed fish; about 40 fish and 16 kg with {@link #planB}. */
  public static DemoWater waterB() {
    return WaterB.water();
  }

  /** The usual plan on water B. */
  public static DemoPlan planB() {
    return WaterB.usualPlan();
  }

  /** A December water of silvers; about 72 fish and 12 kg with {@link #planC}. */
  public static DemoWater waterC() {
    return WaterC.water();
  }

  /** The usual plan on water C. */
  public static DemoPlan planC() {
    return WaterC.usualPlan();
  }
}
