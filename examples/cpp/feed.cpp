// The feed word of a thread, its error, and the speeds at which it is exact: the C interface from C++.
#include <array>
#include <iostream>
#include <stdexcept>
#include <string_view>

#include "threadcalc.h"

namespace {

// Every call of the library in one shape: a status that is not 0 becomes an exception with its message.
template <typename Call>
void checked(Call call)
{
    threadcalc_error_t error;
    if (call(&error) != THREADCALC_STATUS_OK) {
        throw std::runtime_error(error.message);
    }
}

threadcalc_thread_t read(std::string_view designation)
{
    threadcalc_thread_t thread;
    const auto *bytes = reinterpret_cast<const uint8_t *>(designation.data());
    checked([&](threadcalc_error_t *error) {
        return threadcalc_thread_read(bytes, designation.size(), &thread, error);
    });
    return thread;
}

void print(std::string_view designation)
{
    threadcalc_feed_request_t request = THREADCALC_FEED_REQUEST_INIT;
    request.unit = THREADCALC_UNIT_INCH;
    request.mode = THREADCALC_MODE_PER_MINUTE;
    request.lead_mm = read(designation).lead_mm;
    request.rpm = {450, 1};
    request.decimals = {2, 1};
    threadcalc_feed_t feed;
    checked([&](threadcalc_error_t *error) { return threadcalc_feed(&request, &feed, sizeof feed, error); });
    std::cout << designation << " at S450: " << feed.word << ", lead error " << feed.lead_error.numerator << '/'
              << feed.lead_error.denominator << '\n';

    std::array<int64_t, 3> speeds;
    size_t count = 0;
    checked([&](threadcalc_error_t *error) {
        return threadcalc_exact_speeds(&request.lead_mm, &request.rpm, request.unit, 2, 1, 0, speeds.data(),
                                       speeds.size(), &count, error);
    });
    for (size_t place = 0; place < count; place++) {
        std::cout << "exact at S" << speeds[place] << '\n';
    }
}

}  // namespace

int main()
{
    try {
        print("5/8-11 UNC-2B");
    } catch (const std::exception &error) {
        std::cerr << error.what() << '\n';
        return 1;
    }
    return 0;
}
