// overwater for C++17: exceptions instead of statuses, containers instead of pointers and strides.
//
//   double kpa = overwater::call(ow_vapour_pressure, 20.0);
//   std::vector<double> many = overwater::columns(ow_vapour_pressure_array, temperatures);
//   std::string answer = overwater::respond(request);
//
// What each function takes and gives stands in overwater.h, and so do the rules.
#ifndef OVERWATER_HPP
#define OVERWATER_HPP

#include "overwater.h"

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

namespace overwater {

// A refusal. what() is the sentence: the value with its unit, what is allowed, what to do instead.
class error : public std::runtime_error {
public:
    error(std::int32_t status, double value, std::string code, std::string parameter, const std::string &message)
        : std::runtime_error(message), status_(status), value_(value), code_(std::move(code)),
          parameter_(std::move(parameter)) {}

    // One of OW_...
    std::int32_t status() const noexcept { return status_; }
    // The number that was refused; NaN where it was none.
    double value() const noexcept { return value_; }
    // The stable name of the refusal, as in out_of_range.
    const std::string &code() const noexcept { return code_; }
    // The parameter that it is about.
    const std::string &parameter() const noexcept { return parameter_; }

private:
    std::int32_t status_;
    double value_;
    std::string code_;
    std::string parameter_;
};

namespace detail {

// An ow_error with a buffer for its message.
class report {
public:
    report() {
        error_.size = sizeof error_;
        error_.message = message_;
        error_.message_capacity = sizeof message_;
    }
    report(const report &) = delete;
    report &operator=(const report &) = delete;

    ow_error *get() noexcept { return &error_; }

    void raise_unless_done(std::int32_t status) const {
        if (status == OW_OK) {
            return;
        }
        if (status == OW_STRUCT_SIZE || status == OW_MISALIGNED) {
            throw error(status, 0.0, "struct_size", "error", "this header does not fit the library that was loaded");
        }
        throw error(status, error_.value, error_.code, error_.parameter, error_.message);
    }

private:
    char message_[2048] = {};
    ow_error error_ = {};
};

} // namespace detail

// Throws unless the library that was loaded fits this header.
inline void check_version() {
    if (ow_abi_version() != OW_ABI_VERSION || ow_error_size() != sizeof(ow_error)) {
        throw error(OW_STRUCT_SIZE, 0.0, "struct_size", "error", "this header does not fit the library that was loaded");
    }
}

// One number: call(ow_vapour_pressure, 20.0), call(ow_second_virial, OW_GAS_OXYGEN, 20.0).
template <class Function, class... Inputs> double call(Function function, Inputs... inputs) {
    double result = 0.0;
    detail::report report;
    report.raise_unless_done(function(inputs..., &result, report.get()));
    return result;
}

// A column as the C functions take it: numbers and the bytes from one to the next.
class column {
public:
    // The same number in every row.
    column(const double &one) noexcept : start_(&one), stride_(0), rows_(0) {}
    // A whole number would be converted to a double that is gone before it is read: write 0.0, not 0.
    template <class Number, class = std::enable_if_t<std::is_arithmetic_v<Number> && !std::is_same_v<Number, double>>,
              class = void>
    column(const Number &) = delete;
    // Anything with data() and size().
    template <class Container,
              class = std::enable_if_t<std::is_same_v<decltype(std::declval<const Container &>().data()), const double *>>>
    column(const Container &container) noexcept
        : start_(container.data()), stride_(sizeof(double)), rows_(container.size()), is_one_(false) {}
    // A field of an array of structs: column(&structs[0].temperature, sizeof structs[0], structs.size()).
    column(const double *start, std::ptrdiff_t stride, std::size_t rows) noexcept
        : start_(start), stride_(stride), rows_(rows), is_one_(false) {}

    const double *start() const noexcept { return start_; }
    std::ptrdiff_t stride() const noexcept { return stride_; }
    std::size_t rows() const noexcept { return rows_; }
    bool is_one() const noexcept { return is_one_; }

private:
    const double *start_;
    std::ptrdiff_t stride_;
    std::size_t rows_;
    bool is_one_ = true;
};

namespace detail {

// The length that all columns have; a single number has any.
inline std::size_t common_rows(std::initializer_list<column> columns) {
    std::size_t rows = 1;
    bool known = false;
    for (const column &one : columns) {
        if (one.is_one()) {
            continue;
        }
        if (known && one.rows() != rows) {
            throw error(OW_CONTRADICTION, 0.0, "contradiction", "count", "give columns of one length");
        }
        rows = one.rows();
        known = true;
    }
    return rows;
}

template <class Function, class... Before, class... Pieces>
std::vector<double> filled(Function function, std::size_t rows, std::tuple<Before...> before, std::tuple<Pieces...> pieces) {
    std::vector<double> results(rows);
    report report;
    const auto all = std::tuple_cat(before, std::make_tuple(rows), pieces);
    report.raise_unless_done(std::apply(
        [&](auto... arguments) {
            return function(arguments..., results.data(), static_cast<std::ptrdiff_t>(sizeof(double)), report.get());
        },
        all));
    return results;
}

} // namespace detail

// Columns: columns(ow_dry_amount_array, volumes, temperatures, 100.36, 0.0). A row out of range is NaN.
template <class Function, class... Inputs> std::vector<double> columns(Function function, const Inputs &...inputs) {
    return detail::filled(function, detail::common_rows({column(inputs)...}), std::make_tuple(),
                          std::tuple_cat(std::make_tuple(column(inputs).start(), column(inputs).stride())...));
}

// The same for a gas: columns_of_gas(ow_second_virial_array, OW_GAS_OXYGEN, temperatures).
template <class Function, class... Inputs>
std::vector<double> columns_of_gas(Function function, std::int32_t gas, const Inputs &...inputs) {
    return detail::filled(function, detail::common_rows({column(inputs)...}), std::make_tuple(gas),
                          std::tuple_cat(std::make_tuple(column(inputs).start(), column(inputs).stride())...));
}

// A request in JSON to an answer in JSON; an error in JSON is an answer too.
inline std::string respond(std::string_view request) {
    std::string answer(std::size_t{1} << 16, '\0');
    for (;;) {
        std::size_t needed = 0;
        detail::report report;
        const std::int32_t status =
            ow_respond(request.data(), request.size(), answer.data(), answer.size(), &needed, report.get());
        if (status == OW_BUFFER_TOO_SMALL && needed > answer.size()) {
            answer.resize(needed);
            continue;
        }
        report.raise_unless_done(status == OW_REFUSED ? OW_OK : status);
        answer.resize(needed - 1);
        return answer;
    }
}

} // namespace overwater

#endif
