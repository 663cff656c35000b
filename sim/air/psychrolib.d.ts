/** The part of psychrolib 1.1.1 that we call; the package brings no types. Temperatures in °C, pressures in Pa once SI is set. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb_C: number): number;
    GetVapPresFromHumRatio(humidityRatio: number, pressure_Pa: number): number;
    GetHumRatioFromVapPres(vapour_Pa: number, pressure_Pa: number): number;
    GetTDewPointFromVapPres(dryBulb_C: number, vapour_Pa: number): number;
    GetTWetBulbFromHumRatio(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number;
    GetHumRatioFromTWetBulb(dryBulb_C: number, wetBulb_C: number, pressure_Pa: number): number;
    GetStandardAtmPressure(altitude_m: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
