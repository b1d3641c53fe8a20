package hafthold.knife;

/**
 * When stock is fit to be glued up or sanded flush; a workshop's judgement, editable.
 *
 * @param glueGradientFraction most that surface and middle may differ at glue-up, kg/kg
 * @param glueOffTargetFraction furthest that the mean may lie from the moisture to sand at, kg/kg
 * @param glueCoolestCelsius coolest workshop to spread glue in
 * @param glueWarmestCelsius warmest
 * @param sureEnough share of sampled years that must keep the limits before a week is called good, 0 to 1
 * @param nearBest part of the way from the best to the worst week that one of the best may lie off, 0 to 1
 */
public record SeasonLimits(
        double glueGradientFraction,
        double glueOffTargetFraction,
        double glueCoolestCelsius,
        double glueWarmestCelsius,
        double sureEnough,
        double nearBest) {}
