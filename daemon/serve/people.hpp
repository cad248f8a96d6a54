// Who asks: the users of this machine, and the bearers of tokens.
#pragma once

#include "shop/run.hpp"
#include "shop/store.hpp"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace nutward::serve {

struct PeopleOptions {
  std::uint32_t owner = 0; // uid that leads the shop
  // The name of a machine's user, for somebody who asks for the first time; "" where there is none.
  std::string (*user_name)(std::uint32_t uid) = nullptr;
};

class People {
public:
  // The references outlive the People.
  People(shop::Store& store, const shop::Clock& clock, PeopleOptions options);

  // Makes an actor of a user who asks for the first time: the owner leads, others have the bench; whose login
  // is called like somebody gets another name. Throws Problem{not_allowed} for who has retired.
  shop::Caller user(std::uint32_t uid);

  // Whose token an Authorization field bears, with the lesser of the token's role and the actor's own;
  // nullopt: none that is good, or its person has retired. Every good token is compared, each in constant
  // time.
  std::optional<shop::Caller> bearer(std::string_view authorization);

  struct Granted {
    shop::Token token;
    std::string person; // whose it is
    std::string secret; // the token itself: nothing keeps it
    std::int64_t revision = 0;
  };
  // A token for a person by name ("": for `by`). Throws Problem: value for a name that is no plain text of 1
  // to 60 bytes without '/', for one that is kept for the file, for a person who is not there, for a role
  // above the person's own; state where a good token has the name, and where there are a hundred.
  Granted grant(const std::string& name, shop::Role most, const std::string& person, const shop::Caller& by);

  // It is good for nothing from now on. Throws Problem{value} where no good token has that name.
  struct Withdrawn {
    shop::Token token;
    std::int64_t revision = 0;
  };
  Withdrawn withdraw(std::string_view name, const shop::Caller& by);

  // Makes sure that HOME/http.token (0600) holds a token that opens all that the owner may do. Where the file
  // is missing, or what it holds opens less or is another person's, both are made anew and the one before is
  // withdrawn. Returns whether it made them. Throws Problem: state where others may read the file, or
  // something else is in its place; not_allowed where the owner has retired, and then changes nothing.
  bool keep_token_file(const std::filesystem::path& file);

private:
  Granted fresh(const std::string& name, shop::Role most, const shop::Actor& actor,
                std::int64_t by); // not stored
  shop::Caller owner_of(const std::filesystem::path& file);

  shop::Store& store_;
  const shop::Clock& clock_;
  PeopleOptions options_;
};

// The name of the token in that file.
inline constexpr std::string_view token_file = "http.token";

} // namespace nutward::serve
