//! The practicals: which results a row of readings is asked for.

/// Where the water is after burning.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WaterAfterBurning {
    /// Condensed: the volumes are read cold.
    Liquid,
    /// Steam: all volumes are read above 100 degC.
    Gas,
}

/// What is worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Practical {
    /// The amount of dry gas; where a reagent is given, the yield.
    #[default]
    Amount,
    /// A metal and an acid: amount of gas, molar volume measured, yield.
    MetalAndAcid,
    /// Several masses: molar volume from the slope of volume against the amount that each can give.
    MolarVolumeFromSlope,
    /// Molar mass of a metal from the gas it gives.
    MetalMolarMass,
    /// Purity of a carbonate from the gas it gives.
    CarbonatePurity,
    /// Molar mass of a carbonate from the gas it gives.
    CarbonateMolarMass,
    /// Purity of a carbonate from a back titration.
    CarbonateBackTitration,
    /// Molar mass of a gas from the loss of mass of its container and the volume collected.
    GasMolarMass,
    /// Molar mass of a volatile liquid from its vapour, free of water.
    VapourMolarMass,
    /// Amount of gas against time from the loss of mass.
    MassLossRate,
    /// Time to a fixed volume.
    TimeToVolume,
    /// Carbon and hydrogen of a burnt hydrocarbon.
    Eudiometry(WaterAfterBurning),
    /// Molar mass from effusion times.
    Effusion,
    /// Density and molar mass of a weighed gas.
    GasDensity,
}

impl Practical {
    /// Every practical.
    pub const ALL: [Practical; 15] = [
        Practical::Amount,
        Practical::MetalAndAcid,
        Practical::MolarVolumeFromSlope,
        Practical::MetalMolarMass,
        Practical::CarbonatePurity,
        Practical::CarbonateMolarMass,
        Practical::CarbonateBackTitration,
        Practical::GasMolarMass,
        Practical::VapourMolarMass,
        Practical::MassLossRate,
        Practical::TimeToVolume,
        Practical::Eudiometry(WaterAfterBurning::Liquid),
        Practical::Eudiometry(WaterAfterBurning::Gas),
        Practical::Effusion,
        Practical::GasDensity,
    ];

    /// Its name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Practical::Amount => "amount",
            Practical::MetalAndAcid => "metal_and_acid",
            Practical::MolarVolumeFromSlope => "molar_volume_from_slope",
            Practical::MetalMolarMass => "metal_molar_mass",
            Practical::CarbonatePurity => "carbonate_purity",
            Practical::CarbonateMolarMass => "carbonate_molar_mass",
            Practical::CarbonateBackTitration => "carbonate_back_titration",
            Practical::GasMolarMass => "gas_molar_mass",
            Practical::VapourMolarMass => "vapour_molar_mass",
            Practical::MassLossRate => "mass_loss_rate",
            Practical::TimeToVolume => "time_to_volume",
            Practical::Eudiometry(WaterAfterBurning::Liquid) => "eudiometry_water_liquid",
            Practical::Eudiometry(WaterAfterBurning::Gas) => "eudiometry_water_gas",
            Practical::Effusion => "effusion",
            Practical::GasDensity => "gas_density",
        }
    }

    /// Whether it goes by the amount of gas collected.
    #[must_use]
    pub const fn collects_gas(self) -> bool {
        !matches!(
            self,
            Practical::CarbonateBackTitration
                | Practical::TimeToVolume
                | Practical::Eudiometry(_)
                | Practical::Effusion
                | Practical::GasDensity
        )
    }
}
