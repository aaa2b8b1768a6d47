// What a room that grows warmer does to gas collected over water, and a question to the door for everything else.
#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include <overwater.hpp>

int main() {
    try {
        overwater::check_version();
        const std::vector<double> temperatures_c = {15.0, 20.0, 25.0, 30.0};
        const double volume_cm3 = 100.0;
        const double pressure_kpa = 101.325;
        const auto vapour_kpa = overwater::columns(ow_vapour_pressure_array, temperatures_c);
        const auto amount_mmol =
            overwater::columns(ow_dry_amount_array, volume_cm3, temperatures_c, pressure_kpa, 0.0);
        const auto density = overwater::columns_of_gas(ow_gas_density_array, OW_GAS_OXYGEN, temperatures_c, pressure_kpa);
        for (std::size_t i = 0; i < temperatures_c.size(); ++i) {
            std::printf("%.0f degC: vapour %.3f kPa, dry oxygen %.3f mmol in 100 cm3, dry density %.4f g/dm3\n",
                        temperatures_c[i], vapour_kpa[i], amount_mmol[i], density[i]);
        }
        const std::string answer =
            overwater::respond(R"({"format": 1, "task": "weigh", "request": {"format": 1, "formula": "H2O2"}})");
        // A program of your own would read it with a JSON library.
        const std::string key = "\"molar_mass_g_per_mol\":";
        const std::size_t from = answer.find(key) + key.size();
        std::printf("H2O2: %s g/mol\n", answer.substr(from, answer.find(',', from) - from).c_str());
        // Kelvin instead of degrees Celsius.
        overwater::call(ow_vapour_pressure, 293.15);
    } catch (const overwater::error &refusal) {
        std::printf("refused (%s, %s, %g): %s\n", refusal.code().c_str(), refusal.parameter().c_str(), refusal.value(),
                    refusal.what());
        return 0;
    } catch (const std::exception &other) {
        std::fprintf(stderr, "%s\n", other.what());
    }
    return 1;
}
